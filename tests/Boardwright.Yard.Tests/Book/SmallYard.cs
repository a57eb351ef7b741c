using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Tests.Book;

/// <summary>A yard of a few items, built through the book itself, and a clock that stands still.</summary>
internal sealed class SmallYard
{
    public static readonly DateTime Noon = new(2026, 11, 2, 12, 0, 0);

    public SmallYard(IBookStore? store = null)
    {
        Store = store ?? new MemoryBookStore();
        Book = new(Store, new StandingClock(Noon));
    }

    public IBookStore Store { get; }

    public YardBook Book { get; }

    public static LogReceived Log(string tag, string species = "sugar maple", double inches = 16.0) =>
        new(tag, "T-1", species, inches * 25.4, inches * 25.4, (inches + 3.0) * 25.4, 2.4384, 2.57, MetalScan.Clear, 0, EndCoated: true, "mill");

    public static StackBuilt Stack(string tag, string species = "sugar maple", double? bf = 500.0) =>
        new(tag, species, 4, Product.Boards, new(2026, 6, 1), "shed A", "mill", bf, 90);

    public static SmallYard WithKiln()
    {
        var yard = new SmallYard();
        yard.Done(
            new YardDescribed("Test yard", "nowhere", 200.0, 44.0, ThroatMm: 914.4, LogLengthMaxM: 5.5, KerfMm: 1.4, PlanerWidthMm: 610.0),
            new PlaceNamed("shed A", PlaceKind.Shed),
            new PlaceNamed("row 1", PlaceKind.Row),
            new KilnInstalled("K1", KilnType.Conventional, 4000.0, 4.9, 73.9, 28.0, 82.0, 4, 1219.0, 4.9, 818.0, 0.85, 5.0, 4.0, 2.2, 26m, [new(-14.0, 9.0)]),
            new BoilerInstalled("B1", 50.0));
        return yard;
    }

    /// <summary>Writes facts one minute apart, at nine in the morning unless told otherwise; the test fails when one is refused.</summary>
    public IReadOnlyList<Entry> Done(params Fact[] facts) => Done(Noon.AddHours(-3.0), facts);

    public IReadOnlyList<Entry> Done(DateTime from, params Fact[] facts) =>
        Book.Write([.. facts.Select((fact, index) => new NewEntry("Pell", fact, from.AddMinutes(index)))]) switch
        {
            Outcome<IReadOnlyList<Entry>>.Done(var entries) => entries,
            Outcome<IReadOnlyList<Entry>>.Refused(var reasons) => throw new InvalidOperationException(string.Join("; ", reasons)),
            var other => throw new InvalidOperationException($"{other}"),
        };

    public IReadOnlyList<Refusal> Refused(params NewEntry[] entries) =>
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(Book.Write(entries)).Reasons;

    public Refusal Refused(Fact fact) => Refused(new NewEntry("Pell", fact))[0];
}
