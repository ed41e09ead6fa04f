using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>Puts a design onto the shelf.</summary>
internal sealed class ShelfAddCommand : ShelfChange
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file.");
    private readonly Option<string?> _name = Inputs.Text("--name", "text", "Its name on the shelf; the design's own if left out.");
    private readonly Option<string?> _note = Inputs.Text("--note", "text", "What this fin is to try.");
    private readonly Option<string?> _tags = Inputs.Text("--tags", "words", "Words to find it by, separated by commas.");
    private readonly Option<string?> _from = Inputs.Text("--from", "design", "The design or revision on the shelf that it was made from, as NAME or NAME@3.");

    public ShelfAddCommand()
        : base("add", "Put a design onto the shelf, as the first revision of a new design. Files that it names are taken into it.", "finwright shelf add my-fin.fin.json --name my-first --tags weed,first") =>
        AddAll(_file, _name, _note, _tags, _from);

    protected override (string Did, Revision? About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        ShelfEntry entry = ShelvedInput.Read(arguments.GetRequiredValue(_file), arguments.GetValue(_note) ?? "", streams, cancellation);
        long? parent = arguments.GetValue(_from) is string from ? store.Shelf.Get(Reference.Parse(from)).Id : null;
        Revision added = store.Shelf.Add(arguments.GetValue(_name) ?? entry.Design.Name, entry, Inputs.Words(arguments.GetValue(_tags)), parent);
        return ($"Put {added.Label} onto the shelf.", added);
    }
}
