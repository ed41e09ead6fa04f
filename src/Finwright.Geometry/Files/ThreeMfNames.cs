namespace Finwright.Geometry.Files;

/// <summary>Names that the 3MF Core Specification 1.4 and the Open Packaging Conventions (ECMA-376 part 2) fix, and our own namespace.</summary>
internal static class ThreeMfNames
{
    public const string Core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    public const string ContentTypes = "http://schemas.openxmlformats.org/package/2006/content-types";
    public const string Relationships = "http://schemas.openxmlformats.org/package/2006/relationships";
    public const string Xml = "http://www.w3.org/XML/1998/namespace";
    public const string XmlNamespaces = "http://www.w3.org/2000/xmlns/";

    /// <summary>Namespace of our metadata names.</summary>
    public const string Own = "urn:finwright:3mf:1";

    public const string ModelRelationship = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
    public const string ThumbnailRelationship = "http://schemas.openxmlformats.org/package/2006/relationships/metadata/thumbnail";

    public const string RelationshipsType = "application/vnd.openxmlformats-package.relationships+xml";
    public const string ModelType = "application/vnd.ms-package.3dmanufacturing-3dmodel+xml";
    public const string PngType = "image/png";
    public const string JpegType = "image/jpeg";

    public const string ContentTypesPath = "[Content_Types].xml";
    public const string RelationshipsPath = "_rels/.rels";
    public const string ModelPath = "3D/3dmodel.model";
    public const string ThumbnailPath = "Metadata/thumbnail.png";

    /// <summary>Metadata names that the core specification defines (section 3.4, table of well-known names).</summary>
    public static IReadOnlyList<string> WellKnownMetadata { get; } =
        ["Title", "Designer", "Description", "Copyright", "LicenseTerms", "Rating", "CreationDate", "ModificationDate", "Application"];
}
