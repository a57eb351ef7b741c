using System.Globalization;
using System.Net;
using Boardwright.Quantities;

namespace Boardwright.Sensors;

/// <summary>Where a broker is: a host and a port, 1883 unless named.</summary>
public sealed record BrokerPlace(string Host, int Port)
{
    /// <summary>The port of MQTT without encryption, as registered.</summary>
    public const int UsualPort = 1883;

    /// <summary>True when only programs of this machine reach it.</summary>
    public bool IsThisMachine => Host == "localhost" || (IPAddress.TryParse(Host, out var address) && IPAddress.IsLoopback(address));

    public static Outcome<BrokerPlace> Read(string what, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var colon = text.LastIndexOf(':');
        var (host, port) = colon < 0 ? (text.Trim(), "1883") : (text[..colon].Trim(), text[(colon + 1)..]);
        return host.Length > 0 && !host.Any(char.IsWhiteSpace) && int.TryParse(port, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 65535
            ? new BrokerPlace(host, number)
            : new Refusal(what, text, "a host and a port, such as 127.0.0.1:1883");
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Host}:{Port}");
}

/// <summary>The name and the word that sensors and this program show to a broker.</summary>
public sealed record BrokerKey(string Name, string Word)
{
    /// <summary>From the one line of a key file: name:word.</summary>
    public static Outcome<BrokerKey> Read(string what, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var parts = text.Trim().Split(':', 2);
        return parts is [{ Length: > 0 } name, { Length: >= 8 } word] && !text.Trim().Contains('\n', StringComparison.Ordinal)
            ? new BrokerKey(name, word)
            : new Refusal(what, "a file without it", "a file of one line name:word, the word of at least 8 letters");
    }
}
