using System.Collections.Immutable;
using Boardwright.Drying.Schedules;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book;

/// <summary>The yard as the whole book tells it: everything here follows from the entries and the day, and from nothing else.</summary>
/// <remarks>A snapshot: it never changes. Dictionaries are by tag or name, in the order of the tags.</remarks>
public sealed record YardState
{
    /// <summary>Every entry, corrected ones too, in the order of the book.</summary>
    public required IReadOnlyList<Entry> Entries { get; init; }

    /// <summary>The demonstration's day where one was turned, else the day it was asked for.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>True when the book has a demonstration day.</summary>
    public required bool IsDemonstration { get; init; }

    public YardDescribed? Yard { get; init; }

    public required ImmutableSortedDictionary<string, Log> Logs { get; init; }

    public required ImmutableSortedDictionary<string, Stack> Stacks { get; init; }

    public required ImmutableSortedDictionary<string, Charge> Charges { get; init; }

    public required ImmutableSortedDictionary<string, PlannedCharge> PlannedCharges { get; init; }

    /// <summary>Kiln schedules of the house's own, by name.</summary>
    public required ImmutableSortedDictionary<string, KilnSchedule> Schedules { get; init; }

    public required ImmutableSortedDictionary<string, Pack> Packs { get; init; }

    public required ImmutableSortedDictionary<string, Order> Orders { get; init; }

    public required ImmutableSortedDictionary<string, Shipment> Shipments { get; init; }

    public required ImmutableSortedDictionary<string, Pour> Pours { get; init; }

    public required ImmutableSortedDictionary<string, CastingClass> Classes { get; init; }

    public required ImmutableSortedDictionary<string, Resin> Resins { get; init; }

    public required ImmutableSortedDictionary<string, Kiln> Kilns { get; init; }

    public required ImmutableSortedDictionary<string, Boiler> Boilers { get; init; }

    /// <summary>By topic.</summary>
    public required ImmutableSortedDictionary<string, Sensor> Sensors { get; init; }

    public required ImmutableSortedDictionary<string, PersonNamed> People { get; init; }

    public required ImmutableSortedDictionary<string, PlaceNamed> Places { get; init; }

    public required ImmutableSortedDictionary<string, HouseSetting> Settings { get; init; }

    public required ImmutableSortedDictionary<string, SpeciesPriced> Prices { get; init; }

    public required ImmutableSortedDictionary<string, DamageDaysSet> DamageDays { get; init; }

    public required ImmutableSortedDictionary<int, ClimateNormalSet> Normals { get; init; }

    /// <summary>Observed days, and forecast days where nothing was observed.</summary>
    public required ImmutableSortedDictionary<DateOnly, WeatherDay> Weather { get; init; }

    public required WorkCalendar Calendar { get; init; }

    public FuelStock? Fuel { get; init; }

    public required ShavingsBin Shavings { get; init; }

    public required ImmutableList<Call> Calls { get; init; }

    public required ImmutableList<Note> Notes { get; init; }

    public required ImmutableList<Complaint> Complaints { get; init; }

    /// <summary>Values that wait beside what stands, until one of the two is chosen.</summary>
    public required ImmutableList<OtherValue> OtherValues { get; init; }

    /// <summary>Numbers set aside for phones and not released.</summary>
    public required ImmutableList<NumberBlock> NumbersAside { get; init; }

    /// <summary>Names that are of one customer.</summary>
    public required CustomerNames Customers { get; init; }

    public required ImmutableList<ThicknessSet> ThicknessSets { get; init; }

    /// <summary>From when on logs teach what they give over their scale, newest last.</summary>
    public required ImmutableList<YieldBegun> YieldsBegun { get; init; }

    public required ImmutableSortedDictionary<DateTime, double> ShopC { get; init; }

    /// <summary>Standing entries that could not be placed. The book takes no new entry that would add one.</summary>
    public required ImmutableList<Misfit> Misfits { get; init; }

    /// <summary>The yard of a book.</summary>
    /// <param name="entries">The whole book, in its order.</param>
    /// <param name="today">The day, where the book has no demonstration day.</param>
    public static YardState Of(IReadOnlyList<Entry> entries, DateOnly today) => Fold.Run(entries, today);

    /// <summary>The log, stack or pack of a tag.</summary>
    public ITagged? Find(string tag) =>
        Logs.TryGetValue(tag, out var log) ? log : Stacks.TryGetValue(tag, out var stack) ? stack : Packs.GetValueOrDefault(tag);

    /// <summary>An editable figure, or null when nobody set it.</summary>
    public double? Setting(string name) => Settings.TryGetValue(name, out var setting) ? setting.Value : null;

    /// <summary>The entry of a number; 1 is the first.</summary>
    public Entry Entry(long number) => Entries[(int)number - 1];

    /// <summary>All versions of the entry in a place, oldest first.</summary>
    public IReadOnlyList<Entry> Versions(long place) => Corrections.Versions(Entries, place);
}
