using System.Globalization;
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
    /// <summary>The address at which a one-time key is turned into the cookie.</summary>
    public const string EntryPath = "/enter";

    /// <summary>The address at which the program shows, to whoever has the key too, that it has it.</summary>
    public const string ProofPath = "/enter/proof";

    private const string KeyFile = "page.key";
    private const int KeyBytes = 32;
    private const int LongestNonce = 64;

    private readonly byte[] _key;
    private readonly Lock _gate = new();
    private readonly HashSet<string> _tickets = new(StringComparer.Ordinal);
    private readonly HashSet<string> _usedPasses = new(StringComparer.Ordinal);

    private LocalDoor(byte[] key)
    {
        _key = key;
        // Browsers do not tell the ports of one computer apart: each workshop's cookie has a name of its own.
        Cookie = $"finwright-{Signed("cookie")[..8]}";
    }

    /// <summary>Name of the cookie that holds the key.</summary>
    public string Cookie { get; }

    /// <summary>Which run of the program this is: a pass made for another is worth nothing.</summary>
    public string Run { get; } = Guid.NewGuid().ToString("N");

    /// <summary>The door of a workshop; its key is made on first use. Where nothing may be written, the key is good for this run only.</summary>
    /// <param name="folder">Folder beside the store.</param>
    public static LocalDoor Of(string folder)
    {
        if (Existing(folder) is { } known)
            return known;
        byte[] key = RandomNumberGenerator.GetBytes(KeyBytes);
        try
        {
            string file = Path.Combine(folder, KeyFile);
            FileStreamOptions owner = new() { Mode = FileMode.Create, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows())
                owner.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            File.Delete(file);
            using FileStream stream = new(file, owner);
            stream.Write(Encoding.ASCII.GetBytes(Convert.ToHexString(key)));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // A store on a write-protected disk can still be looked at.
        }

        return new(key);
    }

    /// <summary>The door of a workshop that has a key; null when it has none, or it cannot be read.</summary>
    /// <param name="folder">Folder beside the store.</param>
    public static LocalDoor? Existing(string folder)
    {
        try
        {
            byte[] key = Convert.FromHexString(File.ReadAllText(Path.Combine(folder, KeyFile)).Trim());
            return key.Length == KeyBytes ? new(key) : null;
        }
        catch (Exception problem) when (problem is FormatException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>A key that is good for one entry.</summary>
    public string Ticket()
    {
        string ticket = UnguessableName.New(KeyBytes);
        lock (_gate)
            _tickets.Add(ticket);
        return ticket;
    }

    /// <summary>Shows that the key is here without showing the key. The port is part of it, so that nobody can pass on another's proof.</summary>
    /// <param name="port">Port that is listened on.</param>
    /// <param name="nonce">What the asker made up.</param>
    public string Proof(int port, string nonce) => Signed(string.Create(CultureInfo.InvariantCulture, $"proof {port} {nonce}"));

    /// <summary>A key that is good for one entry to another run of the program, which has the same key.</summary>
    /// <param name="port">Port that it listens on.</param>
    /// <param name="run">Which run it is.</param>
    public string Pass(int port, string run)
    {
        string nonce = UnguessableName.New();
        return $"{nonce}.{PassOf(port, run, nonce)}";
    }

    /// <summary>Whether a request carries the key.</summary>
    public bool Knows(HttpRequest request) => Same(request.Cookies[Cookie] ?? "", Convert.ToHexString(_key));

    /// <summary>Answers a request for entry: hands over the cookie and leads to the page, or refuses.</summary>
    public async Task Enter(HttpContext context)
    {
        bool isGood = Takes(context.Request.Query["key"].ToString(), context.Connection.LocalPort);
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

        context.Response.Headers.CacheControl = "no-store";
        // Where the reader was last, if the browser knows.
        context.Response.Redirect("/#back");
    }

    /// <summary>Answers whoever asks whether the key is here.</summary>
    public Task Prove(HttpContext context)
    {
        string nonce = context.Request.Query["nonce"].ToString();
        if (nonce.Length is 0 or > LongestNonce)
            return Refusal.Write(context, StatusCodes.Status400BadRequest, "Nothing was asked.", "Open the address that \"finwright serve\" shows.");
        context.Response.Headers.CacheControl = "no-store";
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync($"{Run} {Proof(context.Connection.LocalPort, nonce)}", context.RequestAborted);
    }

    internal static bool Same(string given, string wanted) => CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given), Encoding.UTF8.GetBytes(wanted));

    private bool Takes(string given, int port)
    {
        lock (_gate)
        {
            if (_tickets.Remove(given))
                return true;
            return given.Split('.') is [{ Length: > 0 and <= LongestNonce } nonce, { } signed] && Same(signed, PassOf(port, Run, nonce)) && _usedPasses.Add(nonce);
        }
    }

    private string PassOf(int port, string run, string nonce) => Signed(string.Create(CultureInfo.InvariantCulture, $"enter {port} {run} {nonce}"));

    private string Signed(string text) => Convert.ToHexStringLower(HMACSHA256.HashData(_key, Encoding.UTF8.GetBytes(text)));
}
