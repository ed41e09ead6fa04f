using Finwright.Design;

namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishSheet : SheetWords
{
    public override string Kind => "Build sheet";

    public override string Done => "done";

    public override string PartColumn => "part";

    public override string NotKnown => "not known";

    public override string Parts(int count) => Count(count, "part");

    public override string Plates(int count) => Count(count, "plate");

    public override string Cups(int count) => Count(count, "cup");

    public override string Stops(int count) => count == 0 ? "no stop" : Count(count, "stop");

    public override string Lies(PrintAttitude attitude) => attitude == PrintAttitude.Lying ? "lying" : "standing";

    public override string AtMost(string limit) => $"at most {limit}";

    public override string AtLeast(string limit) => $"at least {limit}";

    public override string FromTo(string low, string high) => $"{low} to {high}";

    private static string Count(int count, string what) => count == 1 ? $"one {what}" : $"{count} {what}s";
}
