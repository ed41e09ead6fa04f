using System.Security.Cryptography;
using System.Text;

namespace Finwright.Page.Hosting;

/// <summary>
/// Who may come in: this computer's own browser, which was handed the key. Other people on this computer can reach the port, and pages
/// from elsewhere can send a browser here; neither has the key.
/// </summary>
/// <remarks>
/// The key is made once and lies beside the store, readable by its owner alone, so that a page that is open when the program ends finds
/// its way back. The address that is opened holds another, which is good for one entry only.
/// </remarks>
internal sealed class LocalDoor
{
    /// <summary>Name of the cookie that holds the key.</summary>
    public const string Cookie = "finwright-key";

    /// <summary>The address at which a one-time key is turned into the cookie.</summary>
    public const string EntryPath = "/enter";

    private const int KeyBytes = 32;

    private readonly byte[] _key;
    private readonly Lock _gate = new();
    private readonly HashSet<string> _tickets = new(StringComparer.Ordinal);

    private LocalDoor(byte[] key) => _key = key;

    /// <summary>The door of a workshop; its key is made on first use.</summary>
    /// <param name="folder">Folder beside the store.</param>
    public static LocalDoor Of(string folder)
    {
        string file = Path.Combine(folder, "page.key");
        if (File.Exists(file) && Read(file) is { } known)
            return new(known);
        byte[] key = RandomNumberGenerator.GetBytes(KeyBytes);
        FileStreamOptions owner = new() { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            owner.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        File.Delete(file);
        using FileStream stream = new(file, owner);
        stream.Write(Encoding.ASCII.GetBytes(Convert.ToHexString(key)));
        return new(key);
    }

    /// <summary>A key that is good for one entry.</summary>
    public string Ticket()
    {
        string ticket = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(KeyBytes));
        lock (_gate)
            _tickets.Add(ticket);
        return ticket;
    }

    /// <summary>Whether a request carries the key.</summary>
    public bool Knows(HttpRequest request)
    {
        byte[] given = Encoding.ASCII.GetBytes(request.Cookies[Cookie] ?? "");
        return CryptographicOperations.FixedTimeEquals(given, Encoding.ASCII.GetBytes(Convert.ToHexString(_key)));
    }

    /// <summary>Answers a request for entry: hands over the cookie and leads to the page, or refuses.</summary>
    public async Task Enter(HttpContext context)
    {
        string ticket = context.Request.Query["key"].ToString();
        bool isGood;
        lock (_gate)
            isGood = _tickets.Remove(ticket);
        if (!isGood && !Knows(context.Request))
        {
            await Refusal.Write(context, StatusCodes.Status403Forbidden, "This address was used before, or is not one of ours.", "Start \"finwright serve\" again, and open the address that it shows.").ConfigureAwait(false);
            return;
        }

        if (isGood)
        {
            context.Response.Cookies.Append(Cookie, Convert.ToHexString(_key), new()
            {
                HttpOnly = true,
                SameSite = SameSiteMode.Strict,
                IsEssential = true,
                MaxAge = TimeSpan.FromDays(365),
                Path = "/",
            });
        }

        // Where the reader was last, if the browser knows.
        context.Response.Redirect("/#back");
    }

    private static byte[]? Read(string file)
    {
        try
        {
            byte[] key = Convert.FromHexString(File.ReadAllText(file).Trim());
            return key.Length == KeyBytes ? key : null;
        }
        catch (FormatException)
        {
            return null;
        }
    }
}
