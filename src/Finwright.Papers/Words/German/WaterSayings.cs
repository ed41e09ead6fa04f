namespace Finwright.Papers.Words.German;

/// <summary>What the checks of the fin in the water say.</summary>
internal static class WaterSayings
{
    private const string Lost = "Den Umriss ein wenig ändern und noch einmal rechnen.";

    private const string Area = "Mehr Fläche hält, oder eine rundere, dickere Nase (mehr Dicke nahe am Rumpf): dann reißt die Strömung später ab.";

    private const string Load = "Viel mehr Fläche hält, oder weniger Last bei dieser Geschwindigkeit (später und mit mehr Fahrt drücken), oder eine rundere, dickere Nase (mehr Dicke nahe am Rumpf): dann reißt die Strömung später ab.";

    private const string AirWhat = "Luft, die an der Wurzel angesaugt wird";

    private const string AirWhy = "Eine Finne, die Luft zieht, verliert auf einmal die Hälfte ihres Halts oder mehr und greift in Fahrt erst wieder, wenn sie entlastet wird.";

    public static IReadOnlyList<Saying> All { get; } =
    [
        new(
            "stall-reserve", "Reserve bis zum Strömungsabriss",
            "Eine Finne, deren Strömung abreißt, lässt los: das Heck rutscht seitlich weg, Luft wird angesaugt, und der Halt kommt erst wieder, wenn sie entlastet wird.",
            ("area", Area), ("load", Load), ("not-converged", Lost), ("", Area)),
        new(
            "stall-overload", "Reserve bis zum Strömungsabriss",
            "Für einen Augenblick trägt die Finne etwa das Doppelte ihrer Last; reißt die Strömung dabei ab, kommt der Spin-out.",
            ("area", Area), ("load", Load), ("not-converged", Lost), ("", Area)),
        new("ventilation", AirWhat, AirWhy, "Die Basis ohne Spalt einsetzen und der Wurzel mehr Sehne, mehr Dicke oder weniger Last geben."),
        new("ventilation/seal", AirWhat + " (Dichtung am Finnenkasten)", AirWhy, ("seal", "Die Basis ohne Spalt einsetzen und unter jeden Schraubenkopf eine Dichtscheibe legen.")),
        new("ventilation/hull-cover", AirWhat + " (Rumpf über der Wurzel)", AirWhy, ("hull-cover", "Die Finne weiter weg von den Kanten des Hecks setzen oder eine kürzere Wurzelsehne wählen.")),
        new("ventilation/root-flow", AirWhat + " (Strömung an der Wurzel)", AirWhy, ("root-flow", "Der Wurzel mehr Sehne, mehr Dicke oder weniger Last geben, damit die Strömung dort anliegt.")),
        new(
            "cavitation", "Kavitation", "Wo Wasser siedet, verliert die Finne Auftrieb, bremst mehr und wird angegriffen.",
            "Eine rundere Nase, oder mehr Fläche, damit die Finne mit kleinerem Winkel arbeitet, senkt die Saugspitze."),
        new(
            "leeway", "Abdrift bei Reisegeschwindigkeit",
            "Abdrift ist, wohin das Brett neben seiner Richtung fährt: sie kostet Höhe am Wind und dreht den Rumpf quer zum eigenen Kielwasser.",
            "Eine größere oder tiefere Finne macht weniger Abdrift; mehr Fahrt auch."),
        new(
            "drag-share", "Anteil am Vortrieb des Segels, den die Finne bei Reisegeschwindigkeit aufbraucht", "Was die Finne nimmt, geht nicht in die Fahrt.",
            ("induced", "Das meiste geht mit der Seitenkraft: eine tiefere, schmalere Finne hilft am meisten."),
            ("friction", "Das meiste ist Reibung: eine kleinere oder glattere Finne hilft am meisten."),
            ("", "Eine tiefere, schmalere oder eine glattere Finne hilft.")),
        new(
            "centre-of-effort", "Verschiebung des Druckpunkts gegenüber einer bekannten Finne",
            "Eine Finne, deren Last weiter hinten oder weiter vorn sitzt, bringt das Brett aus der gewohnten Balance.",
            ("no-reference", "Mit dem Entwurf einer bekannten Finne vergleichen; auf der Befehlszeile: --against."),
            ("reference", "Den Entwurf der Vergleichsfinne prüfen."),
            ("aft", "Weniger Rake, oder die Basis weiter vorn im Finnenkasten, bringt ihn zurück; oder den Mastfuß nach hinten setzen."),
            ("forward", "Mehr Rake, oder die Basis weiter hinten im Finnenkasten, bringt ihn zurück; oder den Mastfuß nach vorn setzen.")),
        new(
            "lift-opinion", "Seitenkraft bei Abdrift: Unterschied zwischen der Rechnung als tragende Fläche und einer Formel",
            "Zwei Verfahren, die nichts voneinander wissen und übereinstimmen, sind mehr wert als eines.",
            "Umriss und Profile auf etwas Merkwürdiges ansehen; Abdrift und Abreißen für ungenauer nehmen als angegeben."),
        new(
            "weed", "Kraut rutscht von der Vorderkante ab", "Kraut an der Kante bremst, und mit ihm reißt die Strömung ab und die Finne zieht Luft.",
            ("thick-weed", "Mehr Rake geben, so dass fast die ganze Vorderkante um 45° oder mehr gepfeilt ist."),
            ("some-weed", "Mehr Rake geben, vor allem nahe der Wurzel, wo Kraut zuerst hängen bleibt.")),
        new(
            "draught", "Tiefe der Finne im Revier", "Eine Finne, die den Grund berührt, wirft den Fahrer ab und kann den Finnenkasten zerbrechen.",
            "Die Finne kürzer machen, und breiter, damit die Fläche bleibt."),
    ];
}
