using PdfSharp.Fonts;

namespace Finwright.Papers.Pages;

/// <summary>Gives the papers' type to whoever writes PDF.</summary>
internal sealed class InterResolver : IFontResolver
{
    /// <summary>Name of the family.</summary>
    public const string Family = "Inter";

    private const string RegularFace = "Inter-Regular", BoldFace = "Inter-SemiBold";

    /// <inheritdoc/>
    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? BoldFace : RegularFace);

    /// <inheritdoc/>
    public byte[] GetFont(string faceName) => InterFont.Of(faceName == BoldFace).Data;
}
