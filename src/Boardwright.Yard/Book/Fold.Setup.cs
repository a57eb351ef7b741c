using System.Collections.Immutable;
using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book;

// The yard itself. Setting something again replaces it: the book keeps both.
internal sealed partial class Fold
{
    private Refusal? On(NoteWritten fact)
    {
        notes.Add(new(entry.Number, entry.HappenedAt, entry.By, fact.Text, fact.About));
        return null;
    }

    private Refusal? On(ValueBeside fact)
    {
        if (fact.Entry < 1 || fact.Entry >= entry.Number)
            return new("entry", $"{fact.Entry}", $"the number of an earlier entry, 1 to {entry.Number - 1}");
        otherValues.Add(new(entry.Number, fact));
        return null;
    }

    private Refusal? On(NumbersSetAside fact)
    {
        if (fact.First < 1 || fact.Count is < 1 or > 100)
            return new("count", $"{fact.Count} from {fact.First}", "1 to 100 numbers, from 1 up");
        var block = new NumberBlock(entry.Number, entry.HappenedAt, entry.By, fact.Phone, fact.Prefix, fact.First, fact.First + fact.Count - 1);
        if (numbersAside.Find(other => other.Prefix == block.Prefix && other.First <= block.Last && block.First <= other.Last) is { } taken)
            return new("first", $"{fact.Prefix}{fact.First}", $"numbers after {taken.Prefix}{taken.Last}: those before are {taken.Phone}’s");
        numbersAside.Add(block);
        return null;
    }

    private Refusal? On(PhoneCallTaken fact)
    {
        if (fact.Tree is { } tree && SpeciesOf(tree.Species, out _) is { } unknown)
            return unknown;
        calls.Add(new(entry.Number, entry.HappenedAt, entry.By, fact));
        return null;
    }

    private Refusal? On(YardDescribed fact)
    {
        yard = fact;
        return null;
    }

    private Refusal? On(PlaceNamed fact) => Set(places, fact.Place, fact);

    private Refusal? On(PersonNamed fact) => Set(people, fact.Person, fact);

    private Refusal? On(SettingSet fact) => Set(settings, fact.Name, new HouseSetting(fact.Name, fact.Value, fact.Unit, entry.Number));

    private Refusal? On(SpeciesPriced fact) => SpeciesOf(fact.Species, out var species) ?? Set(prices, species.CommonName, fact);

    private Refusal? On(DamageDaysSet fact) => Set(damageDays, fact.StainGroup, fact);

    private Refusal? On(KilnInstalled fact) =>
        InRange("capacity_bf", fact.CapacityBf, 1.0, 1e6, "1 to 1e6 bf")
        ?? (fact.LoadMaxKg is { } carries ? InRange("load_max_kg", carries, 1.0, 1e6, "1 to 1e6 kg, or nothing") : null)
        ?? Set(kilns, fact.Kiln, kilns.TryGetValue(fact.Kiln, out var old) ? old with { Installed = fact, History = old.History.Add(entry.Number) } : new Kiln(fact.Kiln, fact) { History = [entry.Number] });

    private Refusal? On(BoilerInstalled fact) =>
        InRange("steady_output_kw", fact.SteadyOutputKw, 0.0, 1e5, "0 to 1e5 kW")
        ?? Set(boilers, fact.Boiler, boilers.TryGetValue(fact.Boiler, out var old) ? old with { Installed = fact, History = old.History.Add(entry.Number) } : new Boiler(fact.Boiler, fact) { History = [entry.Number] });

    private Refusal? On(EquipmentDown fact) => BackInOrder(fact.BackExpectedOn, fact.BackLateOn) ?? Outages(fact.Equipment, outages => outages.Any(o => o.To is null)
        ? new Refusal("equipment", fact.Equipment, "equipment that is running; this one is down already")
        : outages.Add(new(entry.Number, entry.HappenedAt, null, fact.Why, fact.BackExpectedOn, fact.BackLateOn)));

    // "At the latest" is not before "expected", and neither before it stopped.
    private Refusal? BackInOrder(DateOnly? expected, DateOnly? late) =>
        expected is { } back && back < DateOnly.FromDateTime(entry.HappenedAt) ? new Refusal("back_expected_on", $"{back:yyyy-MM-dd}", $"{entry.HappenedAt:yyyy-MM-dd}, the day of this entry, or later")
        : late is { } last && (expected ?? DateOnly.FromDateTime(entry.HappenedAt)) is var first && last < first ? new Refusal("back_late_on", $"{last:yyyy-MM-dd}", $"{first:yyyy-MM-dd} or later: at the latest is not before it is expected")
        : null;

    private Refusal? On(EquipmentPromised fact) => BackInOrder(fact.BackExpectedOn, fact.BackLateOn) ?? Outages(fact.Equipment, outages => outages.FindIndex(o => o.To is null) is >= 0 and var which
        ? outages.SetItem(which, outages[which] with { BackExpectedOn = fact.BackExpectedOn, BackLateOn = fact.BackLateOn })
        : new Refusal("equipment", fact.Equipment, "equipment that is down"));

    private Refusal? On(EquipmentBack fact) => Outages(fact.Equipment, outages => outages.FindIndex(o => o.To is null) is >= 0 and var which
        ? outages.SetItem(which, outages[which] with { To = entry.HappenedAt })
        : new Refusal("equipment", fact.Equipment, "equipment that is down"));

    private Refusal? On(FuelCounted fact)
    {
        fuel = new(entry.HappenedAt, fact, entry.Number);
        return null;
    }

    private Refusal? On(BoilerStoked fact) => boilers.TryGetValue(fact.Boiler, out var boiler)
        ? Set(boilers, fact.Boiler, boiler with { StokedAt = entry.HappenedAt, History = boiler.History.Add(entry.Number) })
        : Unknown("boiler", fact.Boiler, boilers);

    private Refusal? On(ClimateNormalSet fact)
    {
        if (InRange("month", fact.Month, 1, 12, "1 to 12") is { } refusal)
            return refusal;
        normals[fact.Month] = fact;
        return null;
    }

    private Refusal? On(WeatherObserved fact)
    {
        weather[fact.Date] = new(fact.Date, fact.MeanC, fact.MeanRhPct, fact.WindMeanMS, fact.MinC, fact.MaxC, Observed: true);
        return null;
    }

    private Refusal? On(WeatherForecast fact)
    {
        if (!weather.TryGetValue(fact.Date, out var day) || !day.Observed)
            weather[fact.Date] = new(fact.Date, fact.MeanC, fact.MeanRhPct, fact.WindMeanMS, fact.MinC, fact.MaxC, Observed: false);
        return null;
    }

    private Refusal? On(WorkDaySet fact)
    {
        week[fact.Day] = fact;
        return null;
    }

    private Refusal? On(DayClosed fact)
    {
        closed[fact.Day] = fact;
        return null;
    }

    private Refusal? On(PersonAway fact)
    {
        away.Add(fact);
        return null;
    }

    private static Refusal? Set<T>(SortedDictionary<string, T> items, string name, T item)
    {
        items[name] = item;
        return null;
    }

    private Refusal? Outages(string name, Func<ImmutableList<Outage>, Outcome<ImmutableList<Outage>>> change)
    {
        var outages = kilns.TryGetValue(name, out var kiln) ? kiln.Outages : boilers.TryGetValue(name, out var boiler) ? boiler.Outages : null;
        if (outages is null)
            return new("equipment", name, $"a kiln or boiler of the book: {string.Join(", ", kilns.Keys.Concat(boilers.Keys))}");
        switch (change(outages))
        {
            case Outcome<ImmutableList<Outage>>.Refused(var reasons):
                return reasons[0];
            case Outcome<ImmutableList<Outage>>.Done(var changed) when kiln is not null:
                return Set(kilns, name, kiln with { Outages = changed, History = kiln.History.Add(entry.Number) });
            case Outcome<ImmutableList<Outage>>.Done(var changed):
                return Set(boilers, name, boilers[name] with { Outages = changed, History = boilers[name].History.Add(entry.Number) });
            default:
                throw new InvalidOperationException("An outage is changed or refused.");
        }
    }
}
