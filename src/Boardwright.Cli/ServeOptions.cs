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
/// <param name="PlanWork">Work put into a plan of the season, as a share of the usual.</param>
public sealed record ServeOptions(int Port, string DataFolder, string? DemoFolder, DateOnly? Today, BookPlace? Yard, double PlanWork = 1.0)
{
    private const double PlanWorkMin = 0.05;
    private const double PlanWorkMax = 10.0;

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
        ("--plan-work SHARE", "work put into a plan of the season, 0.05 to 10 of the usual: less where the machine is slow, more where a better plan may take longer (default 1)"),
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

            switch (With(options, name, value))
            {
                case Outcome<ServeOptions>.Done(var taken):
                    options = taken;
                    break;
                case Outcome<ServeOptions>.Refused(var reasons):
                    refusals.AddRange(reasons);
                    break;
            }
        }

        return refusals.Count > 0 ? new Outcome<ServeOptions>.Refused(refusals) : options;
    }

    private static Outcome<ServeOptions> With(ServeOptions options, string name, string value) => name switch
    {
        "--port" => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port <= 65535
            ? options with { Port = port } : new Refusal(name, value, "a port, 0 to 65535"),
        "--data" => options with { DataFolder = value },
        "--demo" => Directory.Exists(value) ? options with { DemoFolder = value } : new Refusal(name, value, "a folder that exists"),
        "--today" => DateOnly.TryParseExact(value, "yyyy-MM-dd", out var day) ? options with { Today = day } : new Refusal(name, value, "a date as year-month-day, such as 2026-11-02"),
        "--yard" => BookPlace.Of(name, value) is Outcome<BookPlace>.Done(var place)
            ? options with { Yard = place } : new Refusal(name, value, "a book's file, or a connection text such as \"Host=127.0.0.1;Database=yard;Username=yard\""),
        "--sensors" => PlaceOf(name, value).Then<ServeOptions>(broker => options with { Sensors = broker }),
        "--broker" => PlaceOf(name, value).Then<ServeOptions>(broker => options with { Broker = broker }),
        "--broker-key" => !File.Exists(value) ? new Refusal(name, value, "a file that exists")
            : BrokerKey.Read(name, File.ReadAllText(value)) is Outcome<BrokerKey>.Done(var key) ? options with { BrokerKey = key } : new Refusal(name, value, "a file of one line name:word, the word of at least 8 letters"),
        "--plan-work" => double.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var share) && share is >= PlanWorkMin and <= PlanWorkMax
            ? options with { PlanWork = share } : new Refusal(name, value, "a share of the usual work, 0.05 to 10"),
        _ => new Refusal(name, name, string.Join(", ", Described.Select(row => row.Words))),
    };

    private static Outcome<BrokerPlace> PlaceOf(string name, string value) =>
        BrokerPlace.Read(name, value) is Outcome<BrokerPlace>.Done(var broker) ? broker : new Refusal(name, value, "a host and a port, such as 127.0.0.1:1883");
}
