namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishSheet
{
    public override string FailingWhat => "They stand below under \"What to heed\", each with what to change. The sheet goes on all the same, so that you can see what it would take.";

    public override string Safety => "Before you begin";

    public override string SheetsFirst => "The data sheets of your resin, hardener and filament, and the law of your place, go before this sheet.";

    public override string Estimates => "All results are estimates, never a certificate. Only your own test shows that the fin carries you.";

    public override string ToHeed => "What to heed";

    public override string Holding => "What holds";

    public override string AllHold => "Everything that was checked holds.";

    public override string CheckColumn => "what was checked";

    public override string ValueColumn => "value";

    public override string LimitColumn => "limit";

    public override string CoverSentence(string span, string area, string parts, string plates) => $"A fin {span} deep, {area} of blade, printed as {parts} on {plates}, filled with epoxy, tried on the bench before it sails.";

    public override string CoverPlan(string elapsed, string work, string cost) => $"It takes {elapsed} from the first print to sailing, {work} of work, and material for {cost}.";

    public override string Failing(int count) => count == 1 ? "1 check fails. Do not build before you have read it." : $"{count} checks fail. Do not build before you have read them.";

    public override string Beside(string ruler) => $"Templates at true size lie beside this sheet. Measure their rulers of {ruler} before you cut anything by them.";

    public override string CautionsFound(int count) => count == 1 ? "The design has 1 caution: finwright check FILE tells it." : $"The design has {count} cautions: finwright check FILE tells them.";
}
