using System.Security.Cryptography;
using System.Text;

namespace Finwright.Page.Phone;

/// <summary>A phone that was let in.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Name">What it says of itself, in a word or two.</param>
/// <param name="Since">When it was let in.</param>
/// <param name="Seen">When it last asked for something.</param>
public sealed record LetInPhone(int Id, string Name, DateTimeOffset Since, DateTimeOffset Seen);

/// <summary>Who may read and tick run sheets over the network: phones that showed a code which is good once.</summary>
public sealed class PhoneDoor
{
    /// <summary>Name of the cookie that holds a phone's key.</summary>
    public const string Cookie = "finwright-phone";

    /// <summary>So many wrong codes close the door to new phones until a new code is asked for.</summary>
    public const int MostWrong = 20;

    private const int KeyBytes = 32, CodeLength = 12;

    // No letters that look alike.
    private const string Alphabet = "abcdefghjkmnpqrstuvwxyz23456789";

    private readonly TimeProvider _time;
    private readonly Lock _gate = new();
    private readonly List<(byte[] Key, LetInPhone Phone)> _phones = [];
    private string? _code;
    private int _wrong, _count;

    /// <summary>A door that nobody has gone through.</summary>
    public PhoneDoor(TimeProvider time)
    {
        _time = time;
        NewCode();
    }

    /// <summary>A phone came in, was sent away, or a code was used up.</summary>
    public event Action? Changed;

    /// <summary>The code that lets one phone in; null when it was used or guessed at too often.</summary>
    public string? Code
    {
        get
        {
            lock (_gate)
                return _code;
        }
    }

    /// <summary>Phones that are let in, the latest first.</summary>
    public IReadOnlyList<LetInPhone> Phones
    {
        get
        {
            lock (_gate)
                return [.. _phones.Select(own => own.Phone).OrderByDescending(phone => phone.Since)];
        }
    }

    /// <summary>Makes a code for one more phone; an earlier one is good no more.</summary>
    public void NewCode()
    {
        lock (_gate)
            (_code, _wrong) = (RandomNumberGenerator.GetString(Alphabet, CodeLength), 0);
        Changed?.Invoke();
    }

    /// <summary>Uses the code up.</summary>
    /// <param name="code">What a phone showed.</param>
    /// <param name="agent">What its browser says of itself.</param>
    /// <returns>The key for its cookie; null when the code is not the one.</returns>
    public string? Admit(string code, string agent)
    {
        ArgumentNullException.ThrowIfNull(code);
        string? key = null;
        lock (_gate)
        {
            if (_code is not null && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(_code), Encoding.UTF8.GetBytes(code.Trim().ToLowerInvariant())))
            {
                byte[] bytes = RandomNumberGenerator.GetBytes(KeyBytes);
                DateTimeOffset now = _time.GetUtcNow();
                _phones.Add((bytes, new(++_count, NameOf(agent), now, now)));
                _code = null;
                key = Convert.ToHexStringLower(bytes);
            }
            else if (_code is not null && ++_wrong >= MostWrong)
            {
                _code = null;
            }
        }

        Changed?.Invoke();
        return key;
    }

    /// <summary>Whether a key is that of a phone that is let in.</summary>
    public bool Knows(string? key)
    {
        if (key is not { Length: 2 * KeyBytes } || !TryRead(key, out byte[] given))
            return false;
        lock (_gate)
        {
            for (int i = 0; i < _phones.Count; i++)
            {
                if (!CryptographicOperations.FixedTimeEquals(_phones[i].Key, given))
                    continue;
                _phones[i] = (_phones[i].Key, _phones[i].Phone with { Seen = _time.GetUtcNow() });
                return true;
            }
        }

        return false;
    }

    /// <summary>Sends a phone away.</summary>
    /// <param name="id">Its number.</param>
    public void SendAway(int id)
    {
        lock (_gate)
            _phones.RemoveAll(own => own.Phone.Id == id);
        Changed?.Invoke();
    }

    private static bool TryRead(string key, out byte[] bytes)
    {
        bytes = new byte[KeyBytes];
        return Convert.FromHexString(key, bytes, out _, out int written) == System.Buffers.OperationStatus.Done && written == KeyBytes;
    }

    private static string NameOf(string agent) => agent switch
    {
        _ when agent.Contains("iPhone", StringComparison.Ordinal) => "iPhone",
        _ when agent.Contains("iPad", StringComparison.Ordinal) => "iPad",
        _ when agent.Contains("Android", StringComparison.Ordinal) => "Android",
        _ when agent.Contains("Windows", StringComparison.Ordinal) => "Windows",
        _ when agent.Contains("Mac OS", StringComparison.Ordinal) => "Mac",
        _ when agent.Contains("Linux", StringComparison.Ordinal) => "Linux",
        _ => "?",
    };
}
