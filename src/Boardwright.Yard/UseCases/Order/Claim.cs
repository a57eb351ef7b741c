using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A complaint answered from the record: what left, what the customer's room does to it, what was measured, and a letter with the facts filled in.</summary>
/// <param name="Complaint">As it was written down.</param>
/// <param name="Verdict">What the record shows, in a sentence.</param>
/// <param name="Figures">What left, the room, the change it makes, the change measured.</param>
/// <param name="Missing">What is not on record and would settle it.</param>
/// <param name="Draft">A letter to send, for the owner to change.</param>
public sealed record ClaimAnswer(Complaint Complaint, string Verdict, IReadOnlyList<Traced> Figures, IReadOnlyList<string> Missing, string Draft)
{
    private const double Deviations = 2.0;

    /// <summary>The answer to a complaint, by its entry.</summary>
    public static Outcome<ClaimAnswer> Of(YardState state, long entry)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Complaints.Find(one => one.Entry == entry) is not { } complaint
            ? new Refusal("complaint", $"{entry}", state.Complaints.Count == 0 ? "none is in the book" : $"one of entries {string.Join(", ", state.Complaints.Select(one => one.Entry))}")
            : complaint.Fact.Cause switch
            {
                ComplaintCause.Shrank => Shrank(state, complaint),
                ComplaintCause.ShortCount => ShortCount(state, complaint),
                ComplaintCause.Insects => Insects(state, complaint),
                _ => Other(state, complaint),
            };
    }

    private static ClaimAnswer Shrank(YardState state, Complaint complaint)
    {
        var fact = complaint.Fact;
        var left = Left(state, fact);
        List<Traced> figures = left is { Figure: { } shipped } ? [shipped] : [];
        List<string> missing = [.. Unknown((left?.Mean, "the moisture it left at"), (fact.WidthThenMm, "its width when it left"), (fact.WidthNowMm, "its width now"), (fact.RoomC, "the room’s temperature"), (fact.RoomRhPct, "the room’s humidity, over a week"))];
        if (fact is not { RoomC: { } roomC, RoomRhPct: { } rh })
            return new(complaint, "The room is not on record: nothing can be said yet.", figures, missing, Letter(fact, [left?.Words, "To tell what happened we need the temperature and humidity of the room over a week, and the width now measured across the middle with a steel rule."]));

        var equation = HouseRules.Equilibrium(state);
        var emc = equation.At(Temperature.FromCelsius(roomC), RelativeHumidity.FromPercent(rh));
        figures.Add(new("The room holds wood at", Text($"{emc.Percent:0.0}"), "%", Text($"{roomC:0.#} °C and {rh:0} % humidity")) { Method = "emc", Source = equation.Printed(), Inputs = [("said by", fact.Customer)] });
        var room = Text($"In a room at {roomC:0.#} °C and {rh:0} % humidity wood settles at about {emc.Percent:0.0} %.");
        if (left is not { Species: { } species, Mean: { } mean } || fact.WidthThenMm is not { } then || Change(species, then, mean, emc) is not { } change)
            return new(complaint, "What left, or how wide it was, is not on record: the change cannot be worked out.", figures, missing, Letter(fact, [left?.Words, room]));

        var spread = (left.Sd ?? 1.0) * Deviations;
        var (most, least) = (Change(species, then, mean + spread, emc)!.Value.Flat, Change(species, then, Math.Max(mean - spread, 0.0), emc)!.Value.Flat);
        figures.Add(new("It should have changed", Text($"{change.Flat:+0.0;−0.0;0.0}"), "mm", Text($"flatsawn, {most:+0.0;−0.0;0.0} to {least:+0.0;−0.0;0.0} for boards from {mean + spread:0.0} to {Math.Max(mean - spread, 0.0):0.0} %; quartersawn {change.Quarter:+0.0;−0.0;0.0}"))
        {
            Method = "shrinkage",
            Source = "Wood Handbook, FPL-GTR-282, eq. 4-9 and table 4-3; when the wood has settled in that room",
            Inputs = [("width then", Text($"{then:0.#} mm")), ("from", Text($"{mean:0.0} %")), ("to", Text($"{emc.Percent:0.0} %")), ("tangential, green to dry", Text($"{species.ShrinkageTangentialPercent:0.0} %")), ("radial", Text($"{species.ShrinkageRadialPercent:0.0} %"))],
        });
        if (fact.WidthNowMm is not { } now)
            return new(complaint, "What it measures now is not on record.", figures, missing, Letter(fact, [left.Words, room, Text($"A flatsawn top {then:0} mm wide then changes by about {change.Flat:+0.0;−0.0} mm ({most:+0.0;−0.0} to {least:+0.0;−0.0}). Please measure it across the middle with a steel rule and let us know.")]));

        var measured = now - then;
        figures.Add(new("It changed", Text($"{measured:+0.0;−0.0;0.0}"), "mm", Text($"{then:0.#} mm then, {now:0.#} mm now, as the customer measured")) { Source = $"entry {complaint.Entry}" });
        var (verdict, closing) = Judge(measured, Math.Min(most, least), Math.Max(most, least), emc);
        return new(complaint, verdict, figures, missing, Letter(fact, [left.Words, room, Text($"From that a flatsawn top {then:0} mm wide changes by about {change.Flat:+0.0;−0.0} mm, between {most:+0.0;−0.0} and {least:+0.0;−0.0} by the spread of the boards; you measured {measured:+0.0;−0.0}."), closing]));
    }

    private static (string Verdict, string Closing) Judge(double measured, double low, double high, MoistureContent room) =>
        measured >= low && measured <= high
            ? ("The room explains it: what was measured lies inside what the wood had to do there.", Text($"So the wood has done what wood does in air that dry, and it will widen again in damper months. Air kept at 35 to 45 % humidity closes most of the gap; a top fixed so that it can slide does not split. We are glad to look at it with you."))
            : measured < low
                ? ("More than the room explains: the wood left wetter than its record, or was wetted since, or the widths were read differently.", "That is more than the room explains. We would like to see it, read its moisture with you and measure it together before we say more; if it left us wetter than our record, we put it right.")
                : (Text($"Less than the room will do: it has not settled at {room.Percent:0.0} % yet, or grew between."), "It may go on moving for some weeks while it settles. Please measure again in a month; we keep your note with the record.");

    private static ClaimAnswer ShortCount(YardState state, Complaint complaint)
    {
        var fact = complaint.Fact;
        var order = fact.Order is { } tag ? state.Orders.GetValueOrDefault(tag) : null;
        if (order is null || fact.CountedBf is not { } counted)
            return new(complaint, "The order, or what they counted, is not on record.", [], [.. Unknown((fact.CountedBf, "what they counted, and how"))], Letter(fact, ["Please tell us which order it is, what you counted and how: by tiers or board by board."]));
        var shipped = order.Lines.Sum(line => line.Shipped);
        var dispute = CountDispute.Of(counted, shipped);
        return new(complaint, Text($"{dispute.DifferenceBf:+#,0;−#,0;0} bf, {dispute.DifferencePct:+0.0;−0.0;0.0} %: {(dispute.IsWithinBlockTally ? "inside" : "outside")} what a count by tiers misses."),
            [new("Theirs less ours", Text($"{dispute.DifferenceBf:+#,0;−#,0;0}"), "bf", Text($"{counted:#,0} counted{(fact.CountedHow is { } how ? $", {how}" : "")}; {shipped:#,0} tallied and shipped")) { Method = "pack-tally", Source = "McKinney 1991: a block tally lies within 3 to 5 % of the piece tally" }], [],
            Letter(fact, [Text($"We shipped {shipped:#,0} bf net on {order.Tag}, measured board by board after drying, nothing added for shrinkage; you counted {counted:#,0}{(fact.CountedHow is { } way ? $" ({way})" : "")}."), dispute.Words]));
    }

    private static ClaimAnswer Insects(YardState state, Complaint complaint)
    {
        var fact = complaint.Fact;
        var charges = ChargesOf(state, fact).ToList();
        var proof = charges.SelectMany(charge => charge.Treatments.Where(HeatTreatmentRule.IsMet).Select(treatment => (charge.Tag, Treatment: treatment))).LastOrDefault();
        return proof.Treatment is { } treated
            ? new(complaint, "It was heat treated and the record shows it: what eats it now came after the kiln.", [new("Coldest core", Text($"{treated.Core.Celsius:0.0}"), "°C", Text($"held {treated.Held.Minutes:0} min in {proof.Tag}, {treated.At:d MMM yyyy}")) { Method = "heat-treatment", Source = $"entry {treated.Entry}; 56 °C for 30 min, Wood Handbook" }], ["what insect it is: send dust and a hole to an entomologist"],
                Letter(fact, [Text($"Charge {proof.Tag} was held with its coldest core at {treated.Core.Celsius:0.0} °C for {treated.Held.Minutes:0} minutes on {treated.At:d MMMM yyyy}; 56 °C for 30 minutes kills insects in all stages. Nothing that was in the wood lived through that. The treatment does not keep new ones out afterwards."), "Please keep some of the dust and send us pictures of the holes with a rule beside them: the kind of insect tells when it came. We will look at it with you."]))
            : new(complaint, "Nothing on record proves that its core reached 56 °C for 30 minutes: it may have come with the wood.", [], ["a heat-treatment record of its charge"],
                Letter(fact, [charges.Count > 0 ? $"Our record of charge {string.Join(", ", charges.Select(charge => charge.Tag))} holds no core temperature, so we do not claim that it was heat treated." : "Our record does not show which charge it came from, so we do not claim that it was heat treated.", "Please keep the piece apart from other wood and send us pictures of the holes with a rule beside them. We will come and look, and agree with you what is put right."]));
    }

    private static ClaimAnswer Other(YardState state, Complaint complaint) => new(complaint, "Read the record with them before anything is agreed.", Left(state, complaint.Fact) is { Figure: { } figure } ? [figure] : [], ["pictures, and a reading of the wood where it is now"],
        Letter(complaint.Fact, [Left(state, complaint.Fact)?.Words, "Please send us pictures and, if you can, the temperature and humidity of the room. We will look at it with you and say what our record shows."]));

    private static IEnumerable<Charge> ChargesOf(YardState state, Complained fact) =>
        fact.Charge is { } tag ? state.Charges.TryGetValue(tag, out var charge) ? [charge] : []
        : ShippedStacks(state, fact).SelectMany(stack => stack.Charges).Distinct().Select(one => state.Charges[one]);

    private static IEnumerable<Stack> ShippedStacks(YardState state, Complained fact) =>
        state.Shipments.Values.Where(shipment => shipment.Order == fact.Order).SelectMany(shipment => shipment.Packs.Select(pack => PackSheet.From(state, state.Packs[pack])).Concat(shipment.Stacks.Select(part => state.Stacks.GetValueOrDefault(part.Stack)).OfType<Stack>())).DistinctBy(stack => stack.Tag);

    // What left: as measured out of the kiln, else as the shipment says.
    private static WhatLeft? Left(YardState state, Complained fact)
    {
        var outs = ChargesOf(state, fact).SelectMany(charge => charge.Out.Select(one => (Charge: charge, Out: one))).Where(pair => pair.Out.McMeanPct is not null).ToList();
        if (outs.LastOrDefault() is { Out: { McMeanPct: { } mean } read, Charge: { } charge } && state.Stacks.GetValueOrDefault(read.OutStack ?? read.Stack) is { } stack)
        {
            var spread = read is { McLowPct: { } low, McHighPct: { } high } ? Text($", {low:0.0} to {high:0.0}") : "";
            var boards = read.Boards is { } count ? Text($" in {count} boards") : "";
            return new(stack.Species, mean, read.McSdPct, Text($"Charge {charge.Tag}, {stack.Species.CommonName}, left our kiln at {mean:0.0} %{boards}{spread}."),
                new("Left the kiln at", Text($"{mean:0.0}"), "%", Text($"{(read.McSdPct is { } sd ? $"deviation {sd:0.0}" : "no deviation on record")}{boards}{spread}")) { Method = "lot-moisture", Source = $"unloading of {charge.Tag}", Inputs = [("charge", charge.Tag), ("wood", stack.Species.CommonName)] });
        }

        return state.Shipments.Values.LastOrDefault(shipment => shipment.Order == fact.Order && shipment.Fact.McPct is not null) is { Fact.McPct: { } shipped } load
            ? new(ShippedStacks(state, fact).FirstOrDefault()?.Species, shipped, null, Text($"The wood of {load.Order} left us on {load.At:d MMMM yyyy} at {shipped:0.0} %."), new("Shipped at", Text($"{shipped:0.0}"), "%", Text($"{load.Tag}, {load.At:d MMM yyyy}")) { Method = "moisture-meter", Source = $"entry {load.Entry}" })
            : null;
    }

    // Millimetres the width changes by, flatsawn and quartersawn; null where no shrinkage is known.
    private static (double Flat, double Quarter)? Change(Species species, double widthMm, double fromPercent, MoistureContent to)
    {
        double By(double total) => widthMm * (Shrinkage.Ratio(total, species.ShrinkageStart, MoistureContent.FromPercent(fromPercent), to) - 1.0);
        return species is { ShrinkageTangentialPercent: { } tangential, ShrinkageRadialPercent: { } radial } ? (By(tangential), By(radial)) : null;
    }

    private static string Letter(Complained fact, IEnumerable<string?> sentences) =>
        $"Dear {fact.Customer},\n\nthank you for telling us{(fact.Text.Length > 0 ? $" (“{fact.Text.TrimEnd('.')}”)" : "")}. {string.Join(" ", sentences.OfType<string>())}\n\nWith kind regards";

    private static IEnumerable<string> Unknown(params (double? Value, string Words)[] wanted) => wanted.Where(one => one.Value is null).Select(one => one.Words);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private sealed record WhatLeft(Species? Species, double? Mean, double? Sd, string Words, Traced Figure);
}
