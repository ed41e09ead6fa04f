using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>Notes where a photo of a build lies.</summary>
internal sealed class BuiltPhotoCommand : BuiltChange
{
    private readonly Argument<string> _build = Inputs.Needed("BUILD", "The build.");
    private readonly Argument<string> _path = Inputs.Needed("FILE", "The photo. Only where it lies is kept, never the photo itself.");
    private readonly Option<string?> _caption = Inputs.Text("--caption", "text", "What it shows.");

    public BuiltPhotoCommand()
        : base("photo", "Note where a photo of a build lies, and what it shows.", "finwright built photo \"Fairway grey\" photos/blade.jpg --caption \"the bubble\"") =>
        AddAll(_build, _path, _caption);

    protected override (string Did, Build About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Build build = store.Builds.Get(arguments.GetRequiredValue(_build));
        string path = arguments.GetRequiredValue(_path);
        if (string.IsNullOrWhiteSpace(path))
            throw new WrongInputException("The name of the photo is empty.", "Name its file.");
        BuildPhoto photo = new(Path.GetFullPath(path), arguments.GetValue(_caption) ?? "");
        store.Builds.Keep(build.Id, photo);
        return ($"Noted {photo.Path} with {ShelfText.Typed(build.Name)}{(File.Exists(photo.Path) ? "." : "; there is no such file now.")}", build);
    }
}
