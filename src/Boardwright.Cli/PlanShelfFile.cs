using System.Text.Json;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.UseCases;

namespace Boardwright.Cli;

/// <summary>Plans kept in a file beside the book, so that the season goes on from yesterday's after a restart.</summary>
/// <param name="path">The file. It can be thrown away: the next plan then begins from nothing and is compared with nothing.</param>
public sealed class PlanShelfFile(string path) : IPlanShelf
{
    private static readonly JsonSerializerOptions Format = new(JsonSerializerDefaults.Web);

    public IReadOnlyList<KeptPlan> Read()
    {
        try
        {
            return File.Exists(path) ? [.. JsonSerializer.Deserialize<List<Line>>(File.ReadAllText(path), Format)!.Select(Plan)] : [];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or JsonException or NullReferenceException or ArgumentException)
        {
            return []; // cut short by a power cut, or of another version: no plan is lost with it
        }
    }

    public void Write(IReadOnlyList<KeptPlan> plans)
    {
        var beside = path + ".new";
        try
        {
            File.WriteAllText(beside, JsonSerializer.Serialize(plans.Select(Line.Of), Format));
            File.Move(beside, path, overwrite: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A full disk stops writing to the book, which says so; the plan can be made again.
        }
    }

    private static KeptPlan Plan(Line line) => new(line.Number, line.Entries, line.Today, line.Days, new(line.Charges, [.. line.Servings.Select(one => new Serving(one.Order, one.Stack, BoardFeet.From(one.Bf)))]));

    private sealed record Line(int Entries, DateOnly Today, int Days, IReadOnlyList<Charge> Charges, IReadOnlyList<Part> Servings, int Number = 1)
    {
        public static Line Of(KeptPlan kept) => new(kept.Entries, kept.Today, kept.Days, kept.Plan.Charges, [.. kept.Plan.Servings.Select(one => new Part(one.Order, one.Stack, one.Quantity.Count))], kept.Number);
    }

    private sealed record Part(string Order, string Stack, double Bf);
}
