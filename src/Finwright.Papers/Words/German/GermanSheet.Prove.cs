using Finwright.Assessment.Figures;
using Finwright.Design;
using Finwright.Strength.Margins;

namespace Finwright.Papers.Words.German;

internal sealed partial class GermanSheet
{
    public override string Prove => "An der Werkbank prüfen";

    public override string ProveReason => "Warum keine Vorhersage möglich war, im englischen Wortlaut der Berechnung:";

    public override string BenchCaption => "Die Finne an der Werkbank: wo das Gewicht hängt und wo abzulesen ist.";

    public override StepWords FullCure => new("Das volle Aushärten abwarten, fünf bis sieben Tage im warmen Raum", "Kühl gehärtetes Epoxid wird tagelang fester.");

    public override StepWords StandClear => new("Das Gewicht eine Handbreit über etwas Weichem aufhängen; Augenschutz tragen, nicht vor der Spitze stehen, Füße weghalten", "Eine brechende Finne schleudert Stücke und lässt das Gewicht fallen.");

    public override StepWords ReadBefore => new("Jede Stelle ohne Gewicht ablesen und unter „vorher“ eintragen", "Nur der Unterschied zählt.");

    public override StepWords ReadLoaded => new("Nach einer halben Minute jede Stelle noch einmal ablesen, unter „belastet“", "Was sich später bewegt, ist Kriechen.");

    public override StepWords ReadAfter => new("Das Gewicht abnehmen, eine halbe Minute warten, noch einmal ablesen, unter „nachher“", "Was bleibt, ist Kriechen oder eine lose Wurzel, nicht Steifigkeit.");

    public override StepWords StopWhen => new("Aufhören, wenn es knackt oder knistert, wenn ein Wert seine Grenze überschreitet oder wenn er nicht zurückgeht", "Dann nicht damit segeln: den Riss suchen, ausbessern oder neu bauen und noch einmal prüfen.");

    public override string ReadAtColumn => "Stelle";

    public override string RangeColumn => "Spanne";

    public override string PassColumn => "Grenze";

    public override string BeforeColumn => "vorher";

    public override string LoadedColumn => "belastet";

    public override string AfterwardsColumn => "nachher";

    public override string DifferenceColumn => "Unterschied";

    public override string TipTurn => "Verdrehung der Spitze, F minus D";

    public override string LoadTurn => "Verdrehung am Gewicht, C minus A";

    public override string TurnNote => "Verdrehung: der Unterschied der beiden Werte, geteilt durch die Sehne dazwischen; positiv, wenn die Hinterkante weiter nach unten geht.";

    public override string PassNote => "Die Spanne fasst, was Material, Druck und Wurzel offen lassen. Jenseits der Grenze ist die Finne schwächer als berechnet: nicht damit segeln. Unter der Spanne ist sie steifer; prüfen, ob Gewicht und Stelle stimmen.";

    public override IReadOnlyList<string> ProveBlanks => ["Gewicht, gewogen", "Gehörter Ton, Hz", "Knacken oder Knistern"];

    public override string ReadingsFor => "Die Werte in eine CSV-Datei eintragen, wie docs/bench-readings.md es beschreibt: finwright bench fit sagt dann, wie steif diese Finne wirklich ist, und jede spätere Antwort rechnet damit.";

    public override string BendCaption => "Durchbiegung entlang der Spannweite unter dem Gewicht, wie vorhergesagt.";

    public override string BenchTitle(string fin) => $"{fin}: Prüfung an der Werkbank";

    public override BenchFigureWords BenchCurves { get; } = new()
    {
        Depth = "Tiefe unter der Rumpfebene",
        Deflection = "Durchbiegung in Richtung des Gewichts",
        LeadingEdge = "Vorderkante",
        MidChord = "Mitte der Sehne",
        TrailingEdge = "Hinterkante",
        Weight = mass => $"hier hängen {mass}",
        Note = "Linien: vorhergesagt. Balken: ihre Spanne, am Gewicht und an der Spitze. Abgelesenes eintragen.",
        Sentence = (value, low, high) => $"Die Mitte der Spitze sollte sich um {value} bewegen, zwischen {low} und {high}.",
    };

    public override string Sail => "Das erste Mal segeln";

    public override string SailSentence => "Nah am Ufer, bei wenig Wind, nicht weiter hinaus, als zurückgeschwommen werden kann.";

    public override string SailHeed => "Auf dem Wasser zu beachten";

    public override IReadOnlyList<StepWords> SailSteps =>
    [
        new("Finne, Fuge, Streifen und Schrauben ansehen; die Schrauben noch einmal nachziehen", "Was an Land lose ist, geht auf dem Wasser verloren."),
        new("Vor dem Losfahren nach Schwimmern und nach der Wassertiefe sehen", "Eine Finne schneidet, und eine Grundberührung bricht Finne oder Kasten."),
        new("Einige kurze Schläge segeln, wo zu stehen ist, auf beiden Bugen", "Eine Finne, die hier versagt, kostet einen Fußweg."),
        new("Zurückkommen und nachsehen: Risse an der Wurzel, Spiel im Kasten, Streifen lose, Wasser im Innern", "Die erste Stunde zeigt, was die Werkbank nicht gezeigt hat."),
        new("Abspülen, trocknen, wiegen und das Gewicht aufschreiben", "Eine Finne, die schwerer wird, zieht Wasser."),
    ];

    public override IReadOnlyList<string> SailBlanks => ["Tag, Ort, Wind", "Brett, Segel, Fahrer", "Beim Angleiten", "Bei Fahrt", "Beide Seiten gleich", "Brummen, Spin-out, Kraut", "Danach: Risse, Spiel, Gewicht", "Was zu ändern ist"];

    public override string ProveSentence(string mass, string distance, string where, string tip) => $"{mass}, {distance} unter der Rumpfebene {where} aufgehängt, sollten die Mitte der Spitze um {tip} bewegen.";

    public override string ProveUnknown(string mass, string distance, string where) => $"Was {mass}, {distance} unter der Rumpfebene {where} aufgehängt, zeigen sollten, ließ sich nicht vorhersagen. Geprüft wird trotzdem: Die Finne muss ganz und ohne ein Geräusch zurückgehen.";

    public override string Where(ChordPlace place) => place switch
    {
        ChordPlace.LeadingEdge => "an der Vorderkante",
        ChordPlace.TrailingEdge => "an der Hinterkante",
        _ => "in der Mitte der Sehne",
    };

    public override StepWords HoldBase(RootHold hold) => hold switch
    {
        RootHold.Clamped => new("Basis und Wurzel auf ganzer Länge starr einspannen, Blatt waagerecht", "Die Vorhersage nimmt die Wurzel als starr gehalten; eine nachgebende Basis zeigt mehr."),
        RootHold.Elastic => new("Die Basis wie im Brett halten, in einem Kasten oder passend geschnittenen Block, Blatt waagerecht", "Die Vorhersage lässt die Basis im Kasten nachgeben und nimmt die Fuge als fest."),
        _ => new("Die Basis wie im Brett halten, in einem Kasten oder passend geschnittenen Block, Schrauben angezogen wie dort, Blatt waagerecht", "Die Vorhersage lässt die Basis im Kasten nachgeben und die Fuge sich öffnen."),
    };

    public override StepWords Hang(string mass, string distance, string where) => new($"{mass} langsam an der Schlaufe aufhängen, {distance} unter der Rumpfebene, {where}", "Ein fallen gelassenes Gewicht belastet die Finne doppelt.");

    public override string FirstCrack(string times, string part, string depth) => $"Der erste Riss ist beim {times}-Fachen dieses Gewichts zu erwarten, {part}, {depth} unter der Rumpfebene.";

    public override string Stressed(StressedPart part) => part switch
    {
        StressedPart.WallAcrossLayers => "in der Wand, zwischen ihren Schichten",
        StressedPart.WallAlongLayers => "in der Wand, entlang ihrer Schichten",
        StressedPart.Core => "im gefüllten Innern",
        StressedPart.Rod => "in einem Kohlestab",
        StressedPart.RodBond => "an der Klebung eines Kohlestabs",
        StressedPart.Cut => "an der Klebung eines Schnitts",
        _ => "an der Ecke zwischen Blatt und Basis",
    };

    public override string BendsFar(string share, string limit) => $"Das Blatt biegt sich um {share} seiner Spannweite: jenseits von {limit} bewegt es sich weniger als vorhergesagt. Zum Vergleichen weniger Gewicht anhängen.";

    public override string PredictedColumn(string unit) => $"Vorhersage, {unit}";

    public override string Place(string letter, string where, bool isTip) => isTip ? $"{letter}: Spitze, {where}" : $"{letter}: am Gewicht, {where}";

    public override StepWords Tap(string frequencies) => new($"Die gehaltene Finne mit dem Knöchel anklopfen und hören oder ein Telefon zählen lassen: erste Töne nahe {frequencies}", "Ein tieferer Ton ist eine weichere oder losere Finne, ein Klappern eine lose.");
}
