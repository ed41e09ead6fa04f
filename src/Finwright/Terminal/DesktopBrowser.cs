using System.Diagnostics;

namespace Finwright.Terminal;

/// <summary>The browser that the system opens addresses with.</summary>
internal static class DesktopBrowser
{
    /// <summary>Opens an address; says so where none can be opened.</summary>
    public static void Open(Uri address, TextStreams streams)
    {
        try
        {
            // Its own chatter is not ours.
            using Process? browser = OperatingSystem.IsLinux()
                ? Process.Start(new ProcessStartInfo("xdg-open", [address.AbsoluteUri]) { UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true })
                : Process.Start(new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true });
        }
        catch (Exception problem) when (problem is System.ComponentModel.Win32Exception or InvalidOperationException)
        {
            streams.Error.WriteLine("finwright: No browser could be opened. Open the address above in one.");
        }
    }
}
