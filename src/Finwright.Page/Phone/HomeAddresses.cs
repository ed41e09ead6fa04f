using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Finwright.Page.Phone;

/// <summary>Addresses of this computer in a home network.</summary>
public static class HomeAddresses
{
    /// <summary>Private IPv4 addresses (RFC 1918) of networks that are up.</summary>
    public static IReadOnlyList<IPAddress> Now()
    {
        try
        {
            return
            [
                .. NetworkInterface.GetAllNetworkInterfaces()
                    .Where(card => card.OperationalStatus is OperationalStatus.Up && card.NetworkInterfaceType is not NetworkInterfaceType.Loopback)
                    .SelectMany(card => card.GetIPProperties().UnicastAddresses)
                    .Select(own => own.Address).Where(IsPrivate).Distinct(),
            ];
        }
        catch (NetworkInformationException)
        {
            return [];
        }
    }

    /// <summary>Whether an address is one of RFC 1918: 10/8, 172.16/12, 192.168/16.</summary>
    public static bool IsPrivate(IPAddress address)
    {
        ArgumentNullException.ThrowIfNull(address);
        if (address.AddressFamily is not AddressFamily.InterNetwork)
            return false;
        byte[] bytes = address.GetAddressBytes();
        return bytes[0] == 10 || bytes[0] == 172 && bytes[1] is >= 16 and < 32 || bytes[0] == 192 && bytes[1] == 168;
    }
}
