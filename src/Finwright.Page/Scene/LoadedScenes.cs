using Finwright.Assessment;
using Finwright.Assessment.Loaded;
using Finwright.Geometry;
using Finwright.Page.Editing;
using Finwright.Page.Words;
using Finwright.Water.Sailing;

namespace Finwright.Page.Scene;

/// <summary>What both scenes of the loaded blade need: which case, and why there are perhaps no numbers.</summary>
internal static class LoadedScenes
{
    /// <summary>The case that is asked for, with its result and skin; else the scene that says why not.</summary>
    public static (AssessmentResult Result, CaseLoaded Own, TriangleMesh Skin)? Find(Standing standing, SceneRequest asked, Reader reader, string says, out DrawnScene? instead)
    {
        instead = null;
        string? problem = standing.Sailing?.Loaded?.Problem ?? standing.Sailing?.Afloat?.Problem ?? standing.Sailing?.Polars?.Problem;
        if (standing.Sailing is not { Loaded: { Structure: not null, Cases.Count: > 0 } loaded } result || Skins.Of(standing, result) is not { } skin)
        {
            instead = SceneNotes.Instead(standing, asked, reader, SceneNotes.Missing(standing, reader, problem), says);
            return null;
        }

        CaseLoaded own = loaded[asked.Case ?? LoadCaseKind.Overload] ?? loaded.Cases[0];
        if (own.HasNumbers)
            return (result, own, skin);
        string when = reader.Tongue.Words.Verdicts.InCase(own.Load.Kind), why = own.Status switch
        {
            LoadedStatus.BeyondRange => reader["The blade would bend by more than a quarter of its depth {0}: farther than this calculation reaches.", when],
            LoadedStatus.NotSettled => reader["Load and shape did not settle {0}: the fin is near twisting without end, or the flow could not be solved.", when],
            _ => reader["The blade could not be solved {0}.", when],
        };
        instead = SceneNotes.Instead(standing, asked, reader, why, says) is { } plain ? plain with { Cases = Kinds(loaded), Case = own.Load.Kind } : null;
        return null;
    }

    /// <summary>The cases there are.</summary>
    public static IReadOnlyList<LoadCaseKind> Kinds(FinLoaded loaded) => [.. loaded.Cases.Select(own => own.Load.Kind)];

    /// <summary>What is to be known of a case before it is believed.</summary>
    public static string Note(Standing standing, CaseLoaded own, Reader reader)
    {
        string note = SceneNotes.Sailing(standing, reader);
        return own.Status is LoadedStatus.NotCarried ? SceneNotes.Both(note, reader["More than the fin carries before it stalls; shown as if it did."]) : note;
    }
}
