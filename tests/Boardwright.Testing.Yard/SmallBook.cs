using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Testing;

/// <summary>A book small enough to be planned in a moment: two empty kilns, three stacks and two orders of the demonstration yard (invented), and two loads planned by hand.</summary>
public static class SmallBook
{
    private static readonly string[] Kilns = ["K1", "K2"];
    private static readonly string[] Stacks = ["S-01", "S-07", "S-11"]; // ash kept for nobody, cherry for O-301, quartersawn white oak for O-302
    private static readonly string[] Orders = ["O-301", "O-302"];
    private static readonly TimeOnly Afternoon = new(16, 0);

    private static readonly Lazy<IReadOnlyList<Entry>> Filled = new(() =>
    {
        var book = new YardBook(new MemoryBookStore([]), Clock());
        NewEntry[] all =
        [
            .. DemonstrationBook.Yard.Entries.Where(entry => Belongs(entry.Fact)).Select(entry => new NewEntry(entry.By, entry.Fact, entry.HappenedAt)),
            new("Oda", new ChargePlanned("C-1", "K1", new(2026, 11, 12), new(2026, 11, 24), ["S-07", "S-01"], "O-301")),
            new("Oda", new ChargePlanned("D-1", "K2", new(2026, 11, 16), new(2026, 12, 4), ["S-11"], "O-302")),
        ];
        return book.Write(all) is Outcome<IReadOnlyList<Entry>>.Done ? book.State.Entries : throw new InvalidDataException("The small book does not fit.");
    });

    /// <summary>A book of one's own on the demonstration's first day, four in the afternoon.</summary>
    public static YardBook Open() => new(new MemoryBookStore(Filled.Value), Clock());

    private static StandingClock Clock() => new(DemonstrationBook.FirstDay.ToDateTime(Afternoon));

    private static bool Belongs(Fact fact) => fact switch
    {
        KilnInstalled kiln => Kilns.Contains(kiln.Kiln),
        SetupFact or DayTurned or BoilerInstalled or EquipmentDown or EquipmentPromised or ClimateNormalSet or WeatherObserved or WeatherForecast or WorkDaySet or DayClosed or PersonAway or FuelCounted => true,
        StackBuilt built => Stacks.Contains(built.Stack),
        MoistureRead read => Stacks.Contains(read.Stack),
        OrderTaken order => Orders.Contains(order.Order),
        _ => false,
    };
}
