using Finwright.Assessment;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Page.Works;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Starting;

/// <summary>Puts designs onto the shelf.</summary>
internal static class NewDesign
{
    /// <summary>Draws a design and puts it onto the shelf.</summary>
    /// <param name="desk">The store.</param>
    /// <param name="name">Its name on the shelf.</param>
    /// <param name="reading">The design.</param>
    /// <param name="note">What is tried.</param>
    /// <param name="revision">The revision; null when it was not kept.</param>
    /// <returns>What keeps it from the shelf; empty when it stands there.</returns>
    /// <exception cref="StoreException">The name is taken or unusable.</exception>
    public static IReadOnlyList<Finding> Put(Desk desk, string name, DesignReading reading, string note, out Revision? revision)
    {
        using Assessor assessor = new();
        AssessmentResult result = assessor.Assess(reading, AssessmentDepth.Shape);
        if (result.InputIsWrong || result.Design is not { } design || result.Blade is not { } blade)
        {
            revision = null;
            return [.. result.Findings.Where(finding => finding.IsError)];
        }

        revision = Put(desk, name, design, blade, note);
        return [];
    }

    /// <summary>Puts a design that was drawn onto the shelf.</summary>
    /// <exception cref="StoreException">The name is taken or unusable.</exception>
    public static Revision Put(Desk desk, string name, FinDesign design, Blade? blade, string note)
    {
        ArgumentNullException.ThrowIfNull(desk);
        return desk.Change(store => store.Shelf.Add(name, new(design, blade is null ? null : ShelfPicture.Of(blade), note, desk.MadeBy), []));
    }

    /// <summary>Where the sheet of a design is.</summary>
    public static string Address(string name) => "/design/" + Uri.EscapeDataString(name);
}
