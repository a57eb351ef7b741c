using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Lineage;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How far heat treatment of some wood is proven.</summary>
public enum HeatStanding
{
    /// <summary>All of it passed a charge with a core of 56 °C for 30 min on record.</summary>
    Proven,

    /// <summary>Some of it did.</summary>
    PartlyProven,

    /// <summary>None of it did.</summary>
    NotProven,

    /// <summary>A tag on its way was lost: nothing may be claimed.</summary>
    TagLost,
}

/// <summary>A charge on the way of the wood, with the record of its cores.</summary>
/// <param name="Charge">The charge.</param>
/// <param name="Best">Its record that meets the rule, the coldest core of them; else its hottest one; null where no core was written.</param>
/// <param name="IsMet">True when the rule is met.</param>
public sealed record ProofCharge(Charge Charge, Treatment? Best, bool IsMet);

/// <summary>Proof of heat treatment of a log's boards, a stack, charge, pack, table or load, from its way through the yard; the same years later.</summary>
/// <param name="Tag">What was asked about.</param>
/// <param name="Standing">How far it is proven.</param>
/// <param name="Share">Footage of it that passed a treated charge, over all.</param>
/// <param name="Says">The answer in a sentence.</param>
/// <param name="Charges">Charges it passed, the first one first.</param>
/// <param name="Way">Every form of the wood up to this one, each with its entry.</param>
/// <param name="Since">What may have happened since; empty where nothing is proven.</param>
public sealed record HeatProof(string Tag, HeatStanding Standing, double Share, string Says, IReadOnlyList<ProofCharge> Charges, IReadOnlyList<WoodStep> Way, string Since)
{
    private const double Whole = 0.9995;

    /// <summary>The proof of a tag; refused for one the book does not have.</summary>
    public static Outcome<HeatProof> Of(YardState state, string tag)
    {
        ArgumentNullException.ThrowIfNull(state);
        var way = WoodWay.Of(state);
        var self = way.Of(tag ?? "");
        if (self.Count == 0)
            return new Refusal("tag", tag ?? "", $"a stack, charge, pack, table or load of the book: {NearestNames.Of(tag ?? "", [.. way.Steps.Values.Select(step => step.Tag).Distinct()])}");

        // In its last form; a charge and a load are all of their parts.
        var last = self.GroupBy(step => step.Tag).Select(group => group.Last()).ToList();
        var keys = way.Back(last.Select(step => step.Key)).Keys.ToHashSet(StringComparer.Ordinal);
        var steps = keys.Select(key => way.Steps[key]).OrderBy(step => step.Form).ThenBy(step => step.At).ThenBy(step => step.Entry).ToList();
        var known = new Dictionary<string, double>(StringComparer.Ordinal);
        var footage = last.Sum(step => Math.Max(step.Bf, 1e-9));
        var share = last.Sum(step => Math.Max(step.Bf, 1e-9) * ShareOf(state, way, step.Key, known)) / footage;
        var charges = steps.Select(step => step.Charge).OfType<string>().Distinct().Select(name => Record(state.Charges[name])).OrderBy(one => one.Charge.LoadedAt).ToList();
        var lost = steps.Select(step => step.Tag).Distinct().Where(name => state.Stacks.GetValueOrDefault(name) is { Proven: false } || state.Packs.GetValueOrDefault(name) is { Proven: false }).ToList();
        var standing = lost.Count > 0 ? HeatStanding.TagLost : share >= Whole ? HeatStanding.Proven : share > 0.0 ? HeatStanding.PartlyProven : HeatStanding.NotProven;
        return new HeatProof(tag!, standing, share, Words(standing, share, charges, lost), charges, steps, SinceWords(state, standing, charges, steps));
    }

    // Of what came into a step, by footage; a treated charge makes all that comes out of it treated.
    private static double ShareOf(YardState state, WoodWay way, string key, Dictionary<string, double> known)
    {
        if (known.TryGetValue(key, out var found))
            return found;
        var step = way.Steps[key];
        if (step is { Form: WoodForm.InKiln or WoodForm.FromKiln, Charge: { } charge } && state.Charges[charge].Treatments.Any(HeatTreatmentRule.IsMet))
            return known[key] = 1.0;
        // Nothing came out of what was not there yet: a pack tallied before the kiln is not treated by it.
        var into = way.Into(key).Where(flow => way.Steps[flow.From].At <= step.At).ToList();
        var all = into.Sum(flow => flow.Bf);
        return known[key] = all > 0.0 ? into.Sum(flow => flow.Bf * ShareOf(state, way, flow.From, known)) / all : 0.0;
    }

    private static ProofCharge Record(Charge charge)
    {
        var met = charge.Treatments.Where(HeatTreatmentRule.IsMet).MinBy(treatment => treatment.Core.Kelvins);
        return new(charge, met ?? charge.Treatments.MaxBy(treatment => treatment.Core.Kelvins), met is not null);
    }

    private static string Words(HeatStanding standing, double share, List<ProofCharge> charges, List<string> lost) => standing switch
    {
        HeatStanding.TagLost => $"Unproven: the tag of {string.Join(", ", lost)} was lost on its way, so nothing may be claimed of it.",
        HeatStanding.Proven => $"Proven: all of it passed {string.Join(" and ", charges.Where(one => one.IsMet).Select(Core))}.",
        HeatStanding.PartlyProven => string.Create(CultureInfo.InvariantCulture, $"Partly proven: {100.0 * share:0} of 100 bf passed {string.Join(" and ", charges.Where(one => one.IsMet).Select(Core))}; claim nothing for the whole."),
        _ when charges.Count == 0 => "Not proven: it saw no kiln.",
        _ => $"Not proven: {string.Join(", ", charges.Select(one => one.Best is { } best ? $"{one.Charge.Tag} reached {best.Core.Celsius.ToString("0.#", CultureInfo.InvariantCulture)} °C for {best.Held.Minutes.ToString("0", CultureInfo.InvariantCulture)} min" : $"no core of {one.Charge.Tag} is on record"))}.",
    };

    private static string Core(ProofCharge one) => string.Create(CultureInfo.InvariantCulture, $"{one.Charge.Tag} with its coldest core at {one.Best!.Core.Celsius:0.#} °C or more for {one.Best.Held.Minutes:0} min on {one.Best.At:d MMM yyyy}");

    // Heat kills what is inside; it keeps nothing out.
    private static string SinceWords(YardState state, HeatStanding standing, List<ProofCharge> charges, List<WoodStep> steps)
    {
        if (standing is not (HeatStanding.Proven or HeatStanding.PartlyProven) || charges.LastOrDefault(one => one.IsMet)?.Best is not { } best)
            return "";
        var gone = steps.LastOrDefault(step => step.Form == WoodForm.Shipped);
        var until = gone?.At.Day() ?? state.Today;
        var prone = steps.Select(step => step.Species?.CommonName).OfType<string>().Distinct().Where(name => Attacked.Any(wood => name.Contains(wood, StringComparison.OrdinalIgnoreCase))).ToList();
        return $"Heat kills what is inside and keeps nothing out: {until.DayNumber - best.At.Day().DayNumber} days lay between it and {(gone is null ? "today" : "the load")}.{(prone.Count > 0 ? $" Powderpost beetles like {string.Join(", ", prone)}: look for fresh holes of 1/32 to 1/16 in." : "")}";
    }

    // Woods that lyctid powderpost beetles attack first (Wood Handbook, ch. 14; GTR-118).
    private static readonly string[] Attacked = ["ash", "hickory", "pecan", "oak", "walnut", "cherry", "maple", "elm", "locust", "persimmon", "sycamore", "sassafras"];
}
