using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Lineage;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Something that rests on the species of a log or stack.</summary>
/// <param name="Tag">What it stands on.</param>
/// <param name="Kind">reading, weight, price, promise, label, charge, load, complaint, tag.</param>
/// <param name="Words">What rests on it and what becomes of it.</param>
/// <param name="Path">Its page.</param>
public sealed record Touch(string Tag, string Kind, string Words, string Path);

/// <summary>What a wrong species touches: everything made of the wood whose meter setting, weight, price, label, promise or charge rested on it.</summary>
public static class SpeciesTouches
{
    /// <summary>All that rests on the species of a log, stack or pack.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="tag">The item.</param>
    /// <param name="other">The species it may be instead, or was before; null lists without figures.</param>
    public static Outcome<IReadOnlyList<Touch>> Of(YardState state, string tag, Species? other = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (state.Find(tag ?? "") is not { } item)
            return new Refusal("item", tag ?? "", $"a log, stack or pack of the book: {NearestNames.Of(tag ?? "", [.. state.Logs.Keys, .. state.Stacks.Keys, .. state.Packs.Keys])}");

        var way = WoodWay.Of(state);
        var keys = way.Of(item.Tag).Select(step => step.Key).ToList();
        var down = way.Forward(keys).Keys.Select(key => way.Steps[key]).OrderBy(step => step.At).ToList();
        var touches = new List<Touch>();
        if (item is Stack or Pack)
            touches.AddRange(way.Back(keys).Keys.Select(key => way.Steps[key]).Where(step => step.Form == WoodForm.Log).OrderBy(step => step.Key, StringComparer.Ordinal)
                .Select(log => new Touch(log.Tag, "tag", $"log on record as {log.Species}", $"/logs/{log.Tag}")));
        if (item is Log)
            touches.AddRange(down.Where(step => step.Form == WoodForm.Stack).SelectMany(stack => Mixed(way, stack, item.Tag)));
        foreach (var stack in down.Select(step => step.Tag).Distinct().Where(state.Stacks.ContainsKey).Select(name => state.Stacks[name]))
            touches.AddRange(OfStack(state, stack, item.Species, other));
        foreach (var pack in down.Where(step => step.Form == WoodForm.Pack).Select(step => state.Packs[step.Tag]))
            touches.AddRange(OfPack(state, pack));
        foreach (var load in down.Where(step => step.Form == WoodForm.Shipped).Select(step => state.Shipments[step.Tag]))
            touches.AddRange(OfLoad(state, load));
        return touches;
    }

    private static IEnumerable<Touch> Mixed(WoodWay way, WoodStep stack, string log)
    {
        var others = way.Into(stack.Key).Select(flow => flow.From).Where(from => from != log).Distinct().ToList();
        if (others.Count > 0)
            yield return new(stack.Tag, "tag", $"holds boards of {others.Count} other logs too: part it board by board", $"/stacks/{stack.Tag}");
    }

    private static IEnumerable<Touch> OfStack(YardState state, Stack stack, Species now, Species? other)
    {
        var path = $"/stacks/{stack.Tag}";
        var read = stack.Readings.Where(reading => reading.Raw is not null).ToList();
        if (read.Count > 0)
            yield return new(stack.Tag, "reading", $"{read.Count} meter readings, set to {string.Join(", ", read.Select(r => r.SetTo?.Name ?? "?").Distinct())}: the raw figures stay, each is understood anew{(read[^1].SpeciesUnknown ? "; species correction unknown, cut an oven section" : "")}", path);
        if (stack.Moisture?.Mean is { } moisture)
            yield return new(stack.Tag, "weight", Weight(stack, moisture, now, other), path);
        if (Price(state, stack, now, other) is { } price)
            yield return new(stack.Tag, "price", price, path);
        foreach (var order in state.Orders.Values.Where(o => o.Lines.Any(line => line.Asked.Stacks.Contains(stack.Tag)) || o.Tag == stack.ReservedFor))
        {
            var asked = order.Lines.FirstOrDefault(line => line.Asked.Stacks.Contains(stack.Tag))?.Asked ?? order.Lines[0].Asked;
            yield return new(order.Tag, "promise", $"{order.Customer}: {asked.Goods}, {(order.IsOpen ? $"due {DayWords.Of(order.DueOn, state.Today)}" : "closed")}", $"/promises/{order.Tag}");
        }

        foreach (var charge in stack.Charges.Select(name => state.Charges[name]))
            yield return new(charge.Tag, "charge", $"{(charge.IsRunning ? "runs" : "ran")} by a schedule for {stack.Species}{(charge.Stacks.Count > 1 ? $", with {string.Join(", ", charge.Stacks.Where(s => s != stack.Tag))}" : "")}", $"/charges/{charge.Tag}");
    }

    private static string Weight(Stack stack, MoistureContent moisture, Species now, Species? other)
    {
        var kg = WoodWeight.OfFootage(now, moisture, stack.Footage).Kilograms;
        var was = other is null ? "" : string.Create(CultureInfo.InvariantCulture, $", {WoodWeight.OfFootage(other, moisture, stack.Footage).Kilograms:#,0} kg as {other.CommonName}");
        return string.Create(CultureInfo.InvariantCulture, $"{kg:#,0} kg as {now.CommonName}{was}");
    }

    private static string? Price(YardState state, Stack stack, Species now, Species? other)
    {
        var (here, there) = (state.Prices.GetValueOrDefault(now.CommonName), other is null ? null : state.Prices.GetValueOrDefault(other.CommonName));
        if (here is null && there is null)
            return null;
        return string.Create(CultureInfo.InvariantCulture,
            $"dry No. 1 Common {(here is null ? "no price" : $"{here.Dry1cMoney:0.00} a bf")} as {now.CommonName}{(other is null ? "" : $", {(there is null ? "no price" : $"{there.Dry1cMoney:0.00}")} as {other.CommonName}")}, {stack.Footage.Count:#,0} bf");
    }

    private static IEnumerable<Touch> OfPack(YardState state, Pack pack)
    {
        yield return new(pack.Tag, "label", pack.LabelledAt is { } at ? $"tag printed {DayWords.Of(at, state.Today)}: print it again" : "no tag printed yet", $"/tally/{pack.Tag}");
    }

    private static IEnumerable<Touch> OfLoad(YardState state, Shipment load)
    {
        var customer = state.Orders[load.Order].Customer;
        yield return new(load.Tag, "load", $"left {DayWords.Of(load.At, state.Today)} for {customer}: tell them", $"/promises/{load.Order}");
        foreach (var complaint in state.Complaints.Where(complaint => complaint.Fact.Order == load.Order))
            yield return new(load.Order, "complaint", $"{complaint.Fact.Customer}: {complaint.Fact.Text}", $"/promises/{load.Order}");
    }
}
