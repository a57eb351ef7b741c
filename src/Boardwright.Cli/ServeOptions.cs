using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sensors;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli;

/// <summary>How the program serves: where the book is, which port, and whether a demonstration yard is made in an empty book.</summary>
/// <param name="Port">0 takes any free port.</param>
/// <param name="DataFolder">Where the book and the keys that keep forms valid over restarts are kept.</param>
/// <param name="DemoFolder">The demonstration's files; null to start with an empty book.</param>
/// <param name="Today">The demonstration's day; null for the machine's day.</param>
/// <param name="Yard">Where the book is, when it is not in the data folder.</param>
public sealed record ServeOptions(int Port, string DataFolder, string? DemoFolder, DateOnly? Today, BookPlace? Yard)
{
    /// <summary>Another program's broker that sensors speak to; null without.</summary>
    public BrokerPlace? Sensors { get; init; }

    /// <summary>Where this program is itself the broker; null without.</summary>
    public BrokerPlace? Broker { get; init; }

    /// <summary>What is shown to, or asked for by, the broker.</summary>
    public BrokerKey? BrokerKey { get; init; }

    public static IReadOnlyList<(string Words, string Help)> Described { get; } =
    [
        ("--port N", "port on 127.0.0.1 (default 5480; 0 takes any free one)"),
        ("--data FOLDER", "where the book, its daily copies and the keys of open forms are kept (default ./data)"),
        ("--demo FOLDER", "make the demonstration yard of this folder when the book is empty"),
        ("--today DATE", "the demonstration's day, such as 2026-11-02 (default: today, moved by whole weeks)"),
        ("--yard DATABASE", "keep the book elsewhere: a book's file, or a PostgreSQL connection text with Host="),
        ("--sensors HOST:PORT", "listen to sensors at the MQTT broker that is there already"),
        ("--broker HOST:PORT", "be the MQTT broker of the sensors; beyond this machine with a key only"),
        ("--broker-key FILE", "a file of one line, name:word, shown to a broker or asked for by this one"),
    ];

    public static Outcome<ServeOptions> Read(ReadOnlySpan<string> words)
    {
        var options = new ServeOptions(5480, "data", null, null, null);
        var refusals = new List<Refusal>();
        for (var index = 0; index < words.Length; index += 2)
        {
            var (name, value) = (words[index], index + 1 < words.Length ? words[index + 1] : null);
            if (value is null)
            {
                refusals.Add(new(name, "nothing after it", string.Join(", ", Described.Select(row => row.Words))));
                break;
            }

            switch (name)
            {
                case "--port" when int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port <= 65535:
                    options = options with { Port = port };
                    break;
                case "--port":
                    refusals.Add(new(name, value, "a port, 0 to 65535"));
                    break;
                case "--data":
                    options = options with { DataFolder = value };
                    break;
                case "--demo" when Directory.Exists(value):
                    options = options with { DemoFolder = value };
                    break;
                case "--demo":
                    refusals.Add(new(name, value, "a folder that exists"));
                    break;
                case "--today" when DateOnly.TryParseExact(value, "yyyy-MM-dd", out var day):
                    options = options with { Today = day };
                    break;
                case "--today":
                    refusals.Add(new(name, value, "a date as year-month-day, such as 2026-11-02"));
                    break;
                case "--yard" when BookPlace.Of(name, value) is Outcome<BookPlace>.Done(var place):
                    options = options with { Yard = place };
                    break;
                case "--yard":
                    refusals.Add(new(name, value, "a book's file, or a connection text such as \"Host=127.0.0.1;Database=yard;Username=yard\""));
                    break;
                case "--sensors" or "--broker":
                    if (BrokerPlace.Read(name, value) is Outcome<BrokerPlace>.Done(var broker))
                        options = name == "--sensors" ? options with { Sensors = broker } : options with { Broker = broker };
                    else
                        refusals.Add(new(name, value, "a host and a port, such as 127.0.0.1:1883"));
                    break;
                case "--broker-key" when File.Exists(value):
                    if (BrokerKey.Read(name, File.ReadAllText(value)) is Outcome<BrokerKey>.Done(var key))
                        options = options with { BrokerKey = key };
                    else
                        refusals.Add(new(name, value, "a file of one line name:word, the word of at least 8 letters"));
                    break;
                case "--broker-key":
                    refusals.Add(new(name, value, "a file that exists"));
                    break;
                default:
                    refusals.Add(new(name, name, string.Join(", ", Described.Select(row => row.Words))));
                    break;
            }
        }

        if (options is { Sensors: not null, Broker: not null })
            refusals.Add(new("--broker", options.Broker.ToString(), "one of --sensors and --broker"));
        if (options is { Broker: { IsThisMachine: false } open, BrokerKey: null } && refusals.Count == 0)
            refusals.Add(new("--broker", open.ToString(), "an address of this machine only, such as 127.0.0.1:1883, or a --broker-key that sensors have to show"));
        if (options.Broker is { Host: var host } && host != "localhost" && !System.Net.IPAddress.TryParse(host, out _))
            refusals.Add(new("--broker", options.Broker.ToString(), "the number of an address of this machine, such as 127.0.0.1:1883 or 0.0.0.0:1883 for all of them"));
        return refusals.Count > 0 ? new Outcome<ServeOptions>.Refused(refusals) : options;
    }
}
