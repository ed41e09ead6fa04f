using Finwright.Assessment.Figures;

namespace Finwright.Papers.Words.German;

internal sealed partial class GermanSheet
{
    public override string Cure => "Aushärten";

    public override string CureNotWorkedOut => "Das Aushärten wurde nicht berechnet. Das Teil kühl halten, wenn möglich im Wasser mit den Entlüftungen oben, und beim Datenblatt des Harzes bleiben.";

    public override string NeverAboveUnknown => "Kühl halten";

    public override string WaterNotNeeded => "Von selbst bleibt es auch an der Luft am warmen Ende der Spanne kühl genug; das Wasser macht es sicherer.";

    public override string WaterNotEnough => "Selbst die ganze Zeit in diesem Wasser bleibt es am warmen Ende der Spanne nicht unter dem Erweichen: so nicht füllen.";

    public override string PouredAt => "Gefüllt um";

    public override string IntoWaterAt => "Ins Wasser um";

    public override string OutOfWaterAt => "Aus dem Wasser um";

    public override string HandledAt => "Angefasst um";

    public override string HoursColumn => "nach dem Füllen";

    public override string ResinHeatColumn => "heißestes Harz, erwartet";

    public override string SkinHeatColumn => "wärmste Haut, erwartet";

    public override string ClockColumn => "Uhrzeit";

    public override string MeasuredColumn => "gemessen";

    public override StepWords Harden => new("Noch einen Tag im warmen Raum stehen lassen, bevor geschliffen wird; volle Festigkeit braucht fünf bis sieben Tage", "Halb gehärtetes Harz setzt das Papier zu, und sein Staub ist der schlimmste.");

    public override StepWords ClosePorts => new("Schläuche und Tropfen bündig abschneiden, Anschlüsse und jede Delle mit angedicktem Epoxid füllen", "Ein offener Anschluss zieht Wasser.");

    public override string CureTitle(string fin, string part) => $"{fin}, {part}: Temperatur beim Aushärten";

    public override CureCurveWords CureCurves { get; } = new()
    {
        Time = "Zeit, h",
        Temperature = "Temperatur",
        Range = "Spanne: halbe bis doppelte Geschwindigkeit der Härtung, Kühlung 30 % besser oder schlechter. Stunden nach dem ersten Füllen.",
        Soften = limit => $"ab {limit} werden die Wände weich",
        Surroundings = "Umgebung",
        Slow = "Harz, langsam",
        Fast = "Harz, schnell",
        WallOutside = "Wand außen",
        WallInside = "Wand innen",
        Hottest = "heißestes Harz",
        OutOfBath = "aus dem Wasser",
        Handled = "kann angefasst werden",
        Sentence = (peak, hours, least, greatest, soft) => $"Das heißeste Harz erreicht {peak} nach {hours} h, zwischen {least} und {greatest}; ab {soft} werden die Wände weich.",
        Happens = (what, hours) => $"{char.ToUpperInvariant(what[0])}{what[1..]} nach {hours} h.",
    };

    public override string CureSentence(string part, string peak, string after) => $"Am wärmsten wird: {part}, voraussichtlich {peak} nach {after}.";

    public override string CureLost(string part) => $"Das Aushärten ließ sich nicht bis zum Ende verfolgen: {part}. Harz, Dicke oder Kühlung etwas ändern und die Papiere neu machen, bevor gefüllt wird.";

    public override string NeverAbove(string temperature) => $"Nie über {temperature}: dort werden die Wände weich";

    public override IReadOnlyList<string> Runaway(bool isBathed) =>
    [
        isBathed
            ? "Ein Teil, das zu warm wird: im Wasser lassen, Entlüftungen oben; kaltes Wasser und Eis dazugeben, nicht in die Anschlüsse."
            : "Ein Teil, das zu warm wird: bis unter die Entlüftungen in eine Wanne mit kaltem Wasser stellen, im Freien, wenn es sich sicher tragen lässt.",
        "Ein Becher, der heiß wird: hinaus ins Freie auf das Metallblech, dünn ausstreichen. Mit Tuch oder Zange halten, nicht mit der bloßen Hand.",
        "Den Rauch nicht einatmen, kein Gefäß und keine Entlüftung schließen, nichts mehr nachfüllen. Türen öffnen, hinausgehen, andere fernhalten, bis es kalt ist.",
        "Wenn es brennt: weggehen, die Tür schließen, die Feuerwehr rufen.",
    ];

    public override StepWords IntoWater(string part, string temperature, string level, string time) => new($"{part} bis {level} der Höhe in Wasser von {temperature} stellen, Entlüftungen über dem Wasser, {time} lang vom Füllen an", "Wasser führt die Wärme ab; zu früh herausgenommen, kommt der Rest an der Luft heraus, wo er nicht wegkann.");

    public override StepWords IntoAir(string part, string temperature) => new($"{part} in ruhiger Luft von {temperature} stehen lassen, fern von Sonne und Heizung, ringsum frei", "Dafür wurde das Aushärten berechnet; eine warme Ecke macht es heißer.");

    public override string WaterNeeded(string time) => $"Kürzer als {time} im Wasser würde es am warmen Ende der Spanne weich.";

    public override string Expected(string peak, string after) => $"Sein Harz sollte höchstens {peak} erreichen, nach {after}.";

    public override StepWords Measure(string place) => new($"Ein Thermometer auf die Haut kleben, {place}, und aufschreiben, was es zeigt", "Ein früher oder hoher Gipfel warnt vor der nächsten Füllung; die Zahlen gehören zu den Notizen dieser Finne.");

    public override string HottestPlace(string distance, bool isBelow) => isBelow ? $"{distance} unter der Rumpfebene, über der dicksten Stelle" : $"{distance} über der Rumpfebene, an der Basis";

    public override string CureCaption(string part) => $"{part}: Temperatur beim Aushärten, mit ihrer Spanne.";

    public override StepWords Handle(string part, string time, string range) => new($"{part} nicht bewegen oder auspacken, bevor {time} vorbei sind ({range})", "Harz, das vor dem Abbinden bewegt wird, verschiebt sich und reißt.");

    public override StepWords HandleUnknown(string part) => new($"{part}: Wann es angefasst werden kann, ist nicht bekannt; warten, bis ein Rest aus demselben Becher hart und glasig ist", "Harz, das vor dem Abbinden bewegt wird, verschiebt sich und reißt.");

    public override string HandleRange(string early, string? late) => late is null ? $"{early} oder länger" : $"{early} bis {late}";
}
