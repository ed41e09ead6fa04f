namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishTemplates
{
    public override string BookTitle => "Templates";

    public override string MeasureTitle => "Measure this first";

    public override string PrintTrue => "Print at 100 % (\"actual size\"), without fitting to the page. Print this page first and leave the others until it is right.";

    public override string MeasureBoth => "Measure both rulers with a steel rule. Right is 99.8 to 100.2 mm.";

    public override string RulerHead => "Ruler";

    public override string MeasuredHead => "Measured, mm";

    public override string TypeHead => "When it is off, type this with what was measured";

    public override string RulerAcross => "across";

    public override string RulerDown => "down";

    public override string WhatToType => "Make the papers again with what the rulers measure, for example --ruler-across-mm 98.5, and measure once more. Check the print settings first: a ruler that is off by more than 2 mm is mostly one that was fitted to the page.";

    public override string ScalePutRight(string across, string down) => $"Scale put right for a printer that prints 100 mm as {across} mm across and {down} mm down.";

    public override string ListHead => "Templates";

    public override string TemplateHead => "Template";

    public override string UseHead => "What for";

    public override string SheetsHead => "Sheets";

    public override string SheetsFromTo(string first, string last) => $"{first} to {last}";

    public override string AssemblyHead => "How sheets go together";

    public override string JoinSheets => "Cut along the long dashes; lay the edge on the dots of the neighbour, crosses with the same number on one another.";

    public override string RightOf(string sheet) => $"right of {sheet}";

    public override string LeftOf(string sheet) => $"left of {sheet}";

    public override string BelowSheet(string sheet) => $"below {sheet}";

    public override string AboveSheet(string sheet) => $"above {sheet}";
}
