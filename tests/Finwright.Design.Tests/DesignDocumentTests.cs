namespace Finwright.Design.Tests;

public sealed class DesignDocumentTests
{
    private const string Document = "docs/design-file.md";

    [Fact]
    public void Generate_is_what_the_committed_document_says()
    {
        string byHand = File.ReadAllText(Path.Combine(Repository.Root, Document)).Split(DesignDocument.Marker)[0];

        Repository.Holds(Document, byHand + DesignDocument.Generate());
    }
}
