using System.Net.Sockets;

namespace Finwright.Page.Hosting;

/// <summary>Another program listens on the port, or the system does not give it away.</summary>
#pragma warning disable CA1032 // Only ever thrown with its port.
public sealed class PortTakenException : Exception
#pragma warning restore CA1032
{
    /// <summary>Says so.</summary>
    /// <param name="port">The port.</param>
    /// <param name="inner">What the system said.</param>
    public PortTakenException(int port, Exception inner)
        : base(inner is SocketException refused ? $"Port {port} cannot be used: {refused.Message}." : $"Port {port} is taken: another program, or a Finwright with another store, is running there.", inner)
    {
    }
}
