using Finwright.Assessment;
using Finwright.Papers.Tests.Templates;

namespace Finwright.Papers.Tests.Views;

/// <summary>The demo designs worked out to their parts and beyond, once a test run.</summary>
internal static class DrawnFins
{
    public static TheoryData<string> Demos { get; } = new("fairway-upright", "sandbar-delta", "eelgrass-rake");

    public static PaperSettings Settings { get; } = new() { Date = new(2026, 11, 27), ProgramVersion = "0.9.0" };

    public static AssessmentResult Of(string demo) => demo switch
    {
        "fairway-upright" => PouredFins.Fairway,
        "sandbar-delta" => PouredFins.Sandbar,
        _ => PouredFins.Eelgrass,
    };
}
