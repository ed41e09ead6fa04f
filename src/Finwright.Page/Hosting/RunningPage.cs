
namespace Finwright.Page.Hosting;

/// <summary>The page of the same workshop, served by a program that was started earlier.</summary>
public static class RunningPage
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    /// <summary>An address that lets a browser in, once; null when nobody, or somebody else, listens on the port.</summary>
    /// <param name="settings">Store and port.</param>
    /// <param name="cancellation">Stops the asking.</param>
    /// <remarks>Whoever listens has to show first that it has the key; the key itself is never sent.</remarks>
    public static async Task<Uri?> Entry(PageSettings settings, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(settings);
        if (settings.Port == 0 || LocalDoor.Existing(settings.KeepingFolder) is not { } door)
            return null;
        Uri address = new UriBuilder(Uri.UriSchemeHttp, settings.Listening.Address.ToString(), settings.Port).Uri;
        using SocketsHttpHandler direct = new() { UseProxy = false, AllowAutoRedirect = false, UseCookies = false };
        using HttpClient client = new(direct) { Timeout = Patience, MaxResponseContentBufferSize = 4096 };
        try
        {
            string nonce = UnguessableName.New();
            string answer = await client.GetStringAsync(new Uri(address, $"{LocalDoor.ProofPath}?nonce={nonce}"), cancellation).ConfigureAwait(false);
            return answer.Split(' ') is [{ } run, { } proof] && LocalDoor.Same(proof, door.Proof(settings.Port, nonce))
                ? new(address, $"{LocalDoor.EntryPath}?key={door.Pass(settings.Port, run)}")
                : null;
        }
        catch (Exception problem) when (problem is HttpRequestException || (problem is OperationCanceledException && !cancellation.IsCancellationRequested))
        {
            return null;
        }
    }
}
