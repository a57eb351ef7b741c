using System.Globalization;
using Boardwright.Quantities;
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
    public static IReadOnlyList<(string Words, string Help)> Described { get; } =
    [
        ("--port N", "port on 127.0.0.1 (default 5480; 0 takes any free one)"),
        ("--data FOLDER", "where the book, its daily copies and the keys of open forms are kept (default ./data)"),
        ("--demo FOLDER", "make the demonstration yard of this folder when the book is empty"),
        ("--today DATE", "the demonstration's day, such as 2026-11-02 (default: today, moved by whole weeks)"),
        ("--yard DATABASE", "keep the book elsewhere: a book's file, or a PostgreSQL connection text with Host="),
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
                default:
                    refusals.Add(new(name, name, string.Join(", ", Described.Select(row => row.Words))));
                    break;
            }
        }

        return refusals.Count > 0 ? new Outcome<ServeOptions>.Refused(refusals) : options;
    }
}
