namespace Finwright.Geometry.Files;

/// <summary>A file that was read is broken, unsafe or of another kind. The message says what is wrong, where, and what to do.</summary>
public sealed class FileFormatException : Exception
{
    /// <summary>Creates the exception without a message.</summary>
    public FileFormatException()
    {
    }

    /// <summary>Creates the exception.</summary>
    /// <param name="message">What is wrong, and where in the file.</param>
    public FileFormatException(string message)
        : base(message)
    {
    }

    /// <summary>Creates the exception.</summary>
    /// <param name="message">What is wrong, and where in the file.</param>
    /// <param name="innerException">What the library that read the bytes said.</param>
    public FileFormatException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
