namespace Finwright.Papers.Words.German;

internal sealed partial class GermanTemplates
{
    public override string BookTitle => "Schablonen";

    public override string MeasureTitle => "Zuerst nachmessen";

    public override string PrintTrue => "Mit 100 % drucken (\"tatsächliche Größe\"), nicht an die Seite anpassen. Diese Seite zuerst drucken, die anderen erst, wenn sie stimmt.";

    public override string MeasureBoth => "Beide Maßstäbe mit einem Stahllineal nachmessen und das Gemessene aufschreiben. Richtig sind 99,8 bis 100,2 mm.";

    public override string RulerHead => "Maßstab";

    public override string MeasuredHead => "Gemessen, mm";

    public override string TypeHead => "Wenn er nicht stimmt, dies und die Zahl eingeben";

    public override string RulerAcross => "quer";

    public override string RulerDown => "längs";

    public override string WhatToType => "Wenn ein Maßstab nicht stimmt, zuerst die Druckeinstellungen prüfen: Weicht er um mehr als 2 mm ab, wurde meist an das Papier angepasst. Stimmt er dann noch nicht, die Papiere mit dem Gemessenen beider Maßstäbe neu erzeugen (Zahlen mit Punkt), zum Beispiel \"finwright papers meine-finne.fin.json --out meine-papiere --ruler-across-mm 98.5 --ruler-down-mm 99.2\", diese Seite drucken und noch einmal nachmessen.";

    public override string ScalePutRight(string across, string down) => $"Berichtigt für einen Drucker, der 100 mm quer als {across} mm und längs als {down} mm druckt.";

    public override string ListHead => "Schablonen";

    public override string TemplateHead => "Schablone";

    public override string UseHead => "Wofür";

    public override string SheetsHead => "Blätter";

    public override string SheetsFromTo(string first, string last) => $"{first} bis {last}";

    public override string AssemblyHead => "Wie die Blätter zusammengehören";

    public override string JoinSheets => "An den langen Strichen schneiden; die Kante auf die Punkte des Nachbarblatts legen, Kreuze mit gleicher Nummer aufeinander.";

    public override string RightOf(string sheet) => $"rechts von {sheet}";

    public override string LeftOf(string sheet) => $"links von {sheet}";

    public override string BelowSheet(string sheet) => $"unter {sheet}";

    public override string AboveSheet(string sheet) => $"über {sheet}";
}
