namespace Finwright.Terminal;

/// <summary>What the program tells the shell when it ends.</summary>
internal enum ExitCode
{
    /// <summary>All went well.</summary>
    Good = 0,

    /// <summary>The input was understood, but the fin cannot be made as described, or a verdict fails.</summary>
    Fails = 1,

    /// <summary>A file, an option or a folder is wrong.</summary>
    WrongInput = 2,

    /// <summary>The program itself is at fault.</summary>
    Fault = 3,

    /// <summary>Stopped by the person: what shells use for Ctrl-C.</summary>
    Stopped = 130,
}
