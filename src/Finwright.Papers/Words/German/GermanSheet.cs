using Finwright.Design;

namespace Finwright.Papers.Words.German;

internal sealed partial class GermanSheet : SheetWords
{
    public override string Kind => "Bauzettel";

    public override string Done => "erledigt";

    public override string PartColumn => "Teil";

    public override string NotKnown => "nicht bekannt";

    public override string Parts(int count) => count == 1 ? "ein Teil" : $"{count} Teile";

    public override string Plates(int count) => count == 1 ? "eine Druckplatte" : $"{count} Druckplatten";

    public override string Cups(int count) => count == 1 ? "ein Becher" : $"{count} Becher";

    public override string Stops(int count) => count switch { 0 => "kein Halt", 1 => "ein Halt", _ => $"{count} Halte" };

    public override string Lies(PrintAttitude attitude) => attitude == PrintAttitude.Lying ? "liegend" : "stehend";

    public override string AtMost(string limit) => $"höchstens {limit}";

    public override string AtLeast(string limit) => $"mindestens {limit}";

    public override string FromTo(string low, string high) => $"{low} bis {high}";
}
