namespace Finwright.Papers.Words.German;

internal sealed partial class GermanSheet
{
    public override string FailingWhat => "Sie stehen unten unter „Zu beachten“, jede mit dem, was zu ändern ist. Der Zettel geht trotzdem weiter, damit zu sehen ist, was es brauchen würde.";

    public override string Safety => "Vor dem Anfang";

    public override string SheetsFirst => "Die Datenblätter von Harz, Härter und Filament und das Recht am Ort gehen diesem Zettel vor.";

    public override string Estimates => "Alle Ergebnisse sind Schätzungen, nie eine Bescheinigung. Nur die eigene Prüfung zeigt, dass die Finne trägt.";

    public override string ToHeed => "Zu beachten";

    public override string Holding => "Was hält";

    public override string AllHold => "Alles, was geprüft wurde, hält.";

    public override string CheckColumn => "was geprüft wurde";

    public override string ValueColumn => "Wert";

    public override string LimitColumn => "Grenze";

    public override string CoverSentence(string span, string area, string parts, string plates) => $"Eine Finne von {span} Tiefe mit {area} Blattfläche, gedruckt als {parts} auf {plates}, mit Epoxid gefüllt, vor dem Segeln an der Werkbank geprüft.";

    public override string CoverPlan(string elapsed, string work, string cost) => $"Sie braucht {elapsed} vom ersten Druck bis zum Segeln, {work} Arbeit und Material für {cost}.";

    public override string Failing(int count) => count == 1 ? "1 Prüfung nicht bestanden. Nicht bauen, bevor sie gelesen ist." : $"{count} Prüfungen nicht bestanden. Nicht bauen, bevor sie gelesen sind.";

    public override string Beside(string ruler) => $"Schablonen in wahrer Größe liegen bei. Ihre Lineale von {ruler} nachmessen, bevor danach geschnitten wird.";

    public override string CautionsFound(int count) => count == 1 ? "Zum Entwurf gibt es 1 Warnung: finwright check DATEI nennt sie." : $"Zum Entwurf gibt es {count} Warnungen: finwright check DATEI nennt sie.";
}
