namespace Finwright.Workshop.Exchange.Archives;

/// <summary>An entry of an archive as its list of contents tells of it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Bytes">Its size, unpacked.</param>
/// <param name="Sha256">SHA-256 of what it holds, lower-case hexadecimal.</param>
internal sealed record SealedFile(string Name, long Bytes, string Sha256);
