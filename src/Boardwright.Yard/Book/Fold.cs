using System.Collections.Immutable;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book;

/// <summary>Reads the standing entries in order and builds the yard. A fact that does not fit is a misfit with its reason; the rest goes on.</summary>
internal sealed partial class Fold
{
    private readonly SortedDictionary<string, Log> logs = Sorted<Log>();
    private readonly SortedDictionary<string, Stack> stacks = Sorted<Stack>();
    private readonly SortedDictionary<string, Charge> charges = Sorted<Charge>();
    private readonly SortedDictionary<string, PlannedCharge> plannedCharges = Sorted<PlannedCharge>();
    private readonly SortedDictionary<string, KilnSchedule> schedules = Sorted<KilnSchedule>();
    private readonly SortedDictionary<string, Pack> packs = Sorted<Pack>();
    private readonly SortedDictionary<string, Order> orders = Sorted<Order>();
    private readonly SortedDictionary<string, Shipment> shipments = Sorted<Shipment>();
    private readonly SortedDictionary<string, Pour> pours = Sorted<Pour>();
    private readonly SortedDictionary<string, CastingClass> classes = Sorted<CastingClass>();
    private readonly SortedDictionary<string, Resin> resins = Sorted<Resin>();
    private readonly SortedDictionary<string, Kiln> kilns = Sorted<Kiln>();
    private readonly SortedDictionary<string, Boiler> boilers = Sorted<Boiler>();
    private readonly SortedDictionary<string, Sensor> sensors = Sorted<Sensor>();
    private readonly SortedDictionary<string, PersonNamed> people = Sorted<PersonNamed>();
    private readonly SortedDictionary<string, PlaceNamed> places = Sorted<PlaceNamed>();
    private readonly SortedDictionary<string, HouseSetting> settings = Sorted<HouseSetting>();
    private readonly SortedDictionary<string, SpeciesPriced> prices = Sorted<SpeciesPriced>();
    private readonly SortedDictionary<string, DamageDaysSet> damageDays = Sorted<DamageDaysSet>();
    private readonly SortedDictionary<int, ClimateNormalSet> normals = [];
    private readonly SortedDictionary<DateOnly, WeatherDay> weather = [];
    private readonly SortedDictionary<DateTime, double> shopC = [];
    private readonly Dictionary<DayOfWeek, WorkDaySet> week = [];
    private readonly SortedDictionary<DateOnly, DayClosed> closed = [];
    private readonly List<PersonAway> away = [];
    private readonly List<Call> calls = [];
    private readonly List<Note> notes = [];
    private readonly List<Complaint> complaints = [];
    private readonly List<OtherValue> otherValues = [];
    private readonly List<NumberBlock> numbersAside = [];
    private readonly List<ThicknessSet> thicknessSets = [];
    private readonly List<YieldBegun> yieldsBegun = [];
    private readonly List<Misfit> misfits = [];
    private CustomerNames customers = CustomerNames.None;
    private YardDescribed? yard;
    private FuelStock? fuel;
    private ShavingsBin shavings = new(null, ImmutableSortedSet.Create<string>(StringComparer.Ordinal), 0.0);

    // The entry being read.
    private Entry entry = null!;

    private Fold()
    {
    }

    public static YardState Run(IReadOnlyList<Entry> entries, DateOnly clockDay)
    {
        var standing = Corrections.Standing(entries);
        var turned = standing.OrderBy(s => s.Place).Select(s => s.Entry.Fact).OfType<DayTurned>().LastOrDefault();
        var fold = new Fold();
        foreach (var (_, entry) in standing)
        {
            fold.entry = entry;
            if (fold.Apply(entry.Fact) is { } why)
                fold.misfits.Add(new(entry.Number, why));
        }

        return fold.Snapshot(entries, turned?.Day ?? clockDay, turned is not null);
    }

    private Refusal? Apply(Fact fact) => fact switch
    {
        Withdrawn => new("corrects", "nothing", "the number of the entry that does not count any more"),
        DayTurned => null,
        ValueBeside f => On(f),
        NumbersSetAside f => On(f),
        NoteWritten f => On(f),
        PhoneCallTaken f => On(f),
        YardDescribed f => On(f),
        PlaceNamed f => On(f),
        PersonNamed f => On(f),
        SettingSet f => On(f),
        SpeciesPriced f => On(f),
        DamageDaysSet f => On(f),
        KilnInstalled f => On(f),
        BoilerInstalled f => On(f),
        EquipmentDown f => On(f),
        EquipmentPromised f => On(f),
        EquipmentBack f => On(f),
        FuelCounted f => On(f),
        BoilerStoked f => On(f),
        SensorPlaced f => On(f),
        SensorJudged f => On(f),
        ClimateNormalSet f => On(f),
        WeatherObserved f => On(f),
        WeatherForecast f => On(f),
        WorkDaySet f => On(f),
        DayClosed f => On(f),
        PersonAway f => On(f),
        LogReceived f => On(f),
        LogSeen f => On(f),
        LogRadiiMeasured f => On(f),
        MetalScanned f => On(f),
        BladeStruck f => On(f),
        EndCoated f => On(f),
        LogSawn f => On(f),
        YieldReset f => On(f),
        ThicknessMeasured f => On(f),
        TagLost f => On(f),
        TagProven f => On(f),
        SpeciesCorrected f => On(f),
        StackBuilt f => On(f),
        StackMoved f => On(f),
        StackTakenFrom f => On(f),
        StackCounted f => On(f),
        StackReserved f => On(f),
        StackDressed f => On(f),
        CustomPlaned f => On(f),
        ShavingsEmptied f => On(f),
        MoistureRead f => On(f),
        SectionsWeighed f => On(f),
        ChargePlanned f => On(f),
        ChargeLoaded f => On(f),
        SampleCut f => On(f),
        SampleWeighed f => On(f),
        SampleDamaged f => On(f),
        SettingsChanged f => On(f),
        GaugeRead f => On(f),
        Interrupted f => On(f),
        RestartStepDone f => On(f),
        ScheduleWritten f => On(f),
        ScheduleChosen f => On(f),
        StressTested f => On(f),
        HeatTreated f => On(f),
        ChargeUnloaded f => On(f),
        PackTallied f => On(f),
        TallyChosen f => On(f),
        PackRestacked f => On(f),
        PackLabelled f => On(f),
        OrderTaken f => On(f),
        OrderAnswered f => On(f),
        OrderChangeAsked f => On(f),
        OrderChangeSettled f => On(f),
        OrderWithdrawn f => On(f),
        CustomersJoined f => On(f),
        Shipped f => On(f),
        Complained f => On(f),
        ClassPlanned f => On(f),
        ResinListed f => On(f),
        ResinCounted f => On(f),
        PourPlanned f => On(f),
        PourMoved f => On(f),
        PourRiskSigned f => On(f),
        ResinMixed f => On(f),
        Poured f => On(f),
        ShopTemperatureRead f => On(f),
        Demoulded f => On(f),
        _ => throw new InvalidOperationException($"The fold does not know {fact.GetType().Name}."),
    };

    private YardState Snapshot(IReadOnlyList<Entry> entries, DateOnly today, bool demonstration) => new()
    {
        Entries = entries,
        Today = today,
        IsDemonstration = demonstration,
        Yard = yard,
        Logs = Frozen(logs),
        Stacks = Frozen(stacks),
        Charges = Frozen(charges),
        PlannedCharges = Frozen(plannedCharges),
        Schedules = Frozen(schedules),
        Packs = Frozen(packs),
        Orders = Frozen(orders),
        Shipments = Frozen(shipments),
        Pours = Frozen(pours),
        Classes = Frozen(classes),
        Resins = Frozen(resins),
        Kilns = Frozen(kilns),
        Boilers = Frozen(boilers),
        Sensors = Frozen(sensors),
        People = Frozen(people),
        Places = Frozen(places),
        Settings = Frozen(settings),
        Prices = Frozen(prices),
        DamageDays = Frozen(damageDays),
        Normals = normals.ToImmutableSortedDictionary(),
        Weather = weather.ToImmutableSortedDictionary(),
        Calendar = new(week.ToImmutableDictionary(), closed.ToImmutableSortedDictionary(), [.. away]),
        Fuel = fuel,
        Shavings = shavings,
        Calls = [.. calls],
        Notes = [.. notes],
        Complaints = [.. complaints],
        OtherValues = [.. otherValues],
        NumbersAside = [.. numbersAside],
        Customers = customers,
        ThicknessSets = [.. thicknessSets],
        YieldsBegun = [.. yieldsBegun],
        ShopC = shopC.ToImmutableSortedDictionary(),
        Misfits = [.. misfits],
    };

    private static SortedDictionary<string, T> Sorted<T>() => new(StringComparer.Ordinal);

    private static ImmutableSortedDictionary<string, T> Frozen<T>(SortedDictionary<string, T> items) => items.ToImmutableSortedDictionary(StringComparer.Ordinal);

    // What was typed for a figure, else the figure itself.
    private string Given(string name, double value) => entry.Typed(name) ?? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{value}");

    private Refusal? InRange(string name, double? value, double low, double high, string accepted) =>
        value is { } given && !(given >= low && given <= high) ? new(name, Given(name, given), accepted) : null;

    private static Refusal? Fresh<T>(string what, string tag, SortedDictionary<string, T> items) =>
        tag.Trim().Length == 0 ? new(what, tag, "a tag that is not empty")
        : items.ContainsKey(tag) ? new(what, tag, "a tag that is not in use; correct the earlier entry if it is the same")
        : null;

    private static Refusal Unknown<T>(string what, string given, SortedDictionary<string, T> items) => new(what, given,
        items.Count == 0 ? "none is in the book at that time" : $"one that is in the book at that time: {NearestNames.Of(given, items.Keys)}");

    private static Refusal? SpeciesOf(string text, out Species species) => Got(SpeciesTable.Find("species", text), out species);

    // The answer of a core function, or the reason it was refused; the value means nothing then.
    private static Refusal? Got<T>(Outcome<T> outcome, out T value)
    {
        value = outcome is Outcome<T>.Done(var done) ? done : default!;
        return outcome is Outcome<T>.Refused(var reasons) ? reasons[0] : null;
    }
}
