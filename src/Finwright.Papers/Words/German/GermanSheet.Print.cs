namespace Finwright.Papers.Words.German;

internal sealed partial class GermanSheet
{
    public override string Print => "Drucken";

    public override string PrintNotPlanned => "Der Druck wurde nicht geplant: Hier können keine Zahlen stehen.";

    public override string Settings => "Einstellungen im Programm des Druckers";

    public override string SettingColumn => "Einstellung";

    public override string PlasticSetting => "Kunststoff";

    public override string LayerSetting => "Schichthöhe";

    public override string WallSetting => "Wände";

    public override string SolidSetting => "volle Schichten";

    public override string InfillSetting => "Füllung";

    public override string SpeedSetting => "Geschwindigkeit";

    public override string HeatSetting => "Düse und Bett";

    public override string HeatValue => "nach dem Datenblatt des Filaments";

    public override string SupportSetting => "Stützen";

    public override string PartsHead => "Die Teile";

    public override string PlateColumn => "Platte";

    public override string LiesColumn => "Lage";

    public override string TimeColumn => "Zeit";

    public override string PlasticColumn => "Kunststoff";

    public override StepWords KeepAttitude => new("Die Dateien laden, wie sie sind; Teile nicht drehen und nicht skalieren", "Sie liegen, wie Festigkeit und Überhang es verlangen, in wahrer Größe.");

    public override StepWords TryGauge => new("Die Lehre im Kasten des Bretts probieren, bevor irgendetwas anderes gedruckt wird", "Sie muss mit festem Druck hineingehen. Wenn nicht, die Zugaben der Basis in der Entwurfsdatei ändern und alle Papiere und Dateien neu machen.");

    public override StepWords SetPauses => new("Vor jeder Schicht dieser Tabelle eine Pause setzen; Schichten vom Bett an ab 1 zählen und die Höhe vergleichen", "Die Mutter muss hinein, bevor sich ihre Tasche schließt; eine vergessene lässt sich nicht nachholen.");

    public override string LayerColumn => "vor Schicht";

    public override string HeightColumn => "in Höhe";

    public override string PutInColumn => "einlegen";

    public override string RoomColumn => "Luft darüber";

    public override StepWords PutIn => new("Bei jeder Pause: mit der Pinzette einlegen, hinunterdrücken, bis es unter der letzten Schicht liegt, gleich weiterdrucken", "Was übersteht, fängt die Düse und reißt den Druck vom Bett.");

    public override StepWords FirstLayers => new("Bei den ersten Schichten dabeibleiben", "Was sich jetzt abhebt, bleibt abgehoben.");

    public override string PrintSentence(string time, string plates, string grams, string stops) => $"Etwa {time} Druckzeit, {plates}, {grams} Kunststoff, {stops}.";

    public override string WallValue(int lines, string width, string thickness) => lines == 1 ? $"eine Linie von {width}" : $"{lines} Linien von {width}, zusammen {thickness}";

    public override string SolidValue(int layers) => $"{layers} oben, {layers} unten";

    public override string InfillValue(string share) => $"Gyroid, {share}";

    public override string SpeedValue(string outer, string inner) => $"Außenwand {outer}, alles andere {inner}";

    public override string SupportValue(bool needed) => needed ? "wo ein Teil überhängt; siehe das Urteil unten" : "keine";

    public override string SizeColumn(string unit) => $"Größe auf dem Bett, {unit}";

    public override StepWords DryFilament(string temperature) => new($"Das Filament trocknen, wie sein Datenblatt sagt; bei PETG sind 4 bis 6 h bei {temperature} üblich (aus dem Gedächtnis)", "Feuchtes Filament zieht Fäden, seine Schichten halten schlecht, und Harz läuft aus.");

    public override string PlateHead(int number, string parts) => $"Platte {number}: {parts}";

    public override string PlateCaption(int number) => $"Platte {number}, das Bett von oben gesehen.";

    public override StepWords PrintPlate(int number, string time, string grams) => new($"Platte {number} drucken: etwa {time}, {grams} Kunststoff", "Die Spanne lassen Geschwindigkeit, Ecken und Kühlung des Druckers offen.");

    public override StepWords Brim(string parts, string width) => new($"Ringsum einen Rand von {width} geben: {parts}", "Was hoch auf kleinem Fuß steht, löst ein Stoß der Düse.");

    public override StepWords Discs(string parts, string diameter) => new($"Scheiben von {diameter} unter die Enden legen, eine Schicht dick: {parts}", "Ein langer Fuß hebt sich dort zuerst, wenn er schrumpft.");

    public override StepWords PutInLater(string items) => new($"Nach dem Druck einlegen: {items}", "Die Tasche bleibt offen, es braucht keine Pause.");

    public override string CannotPutIn(string items) => $"Keine Pause bringt dies hinein: {items}. Das Teil auf dem Bett drehen oder die Tasche zu einer Seite öffnen.";

    public override StepWords CoolPlate(string temperature) => new($"Das Bett unter {temperature} abkühlen lassen, bevor etwas abgenommen wird", "Lange Teile verziehen sich, wenn sie warm abgezogen werden (gängige Praxis, ohne Quelle).");
}
