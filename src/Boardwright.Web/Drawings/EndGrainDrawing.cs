using Boardwright.Wood;

namespace Boardwright.Web.Drawings;

/// <summary>Marks of an end grain picture, drawn from the features of a species and from nothing else. The bark is up; each ring begins below.</summary>
public sealed record EndGrainDrawing
{
    public const double Size = 240.0;
    private const int Rings = 3;
    private const double RingHeight = Size / Rings;
    private const double Large = 5.2;
    private const double Small = 1.7;
    private const double Golden = 0.6180339887498949;

    private EndGrainDrawing(EndGrain wood) => Wood = wood;

    public EndGrain Wood { get; }

    /// <summary>Heights of the ring lines.</summary>
    public IReadOnlyList<double> RingLines { get; } = [.. Enumerable.Range(1, Rings).Select(ring => ring * RingHeight)];

    /// <summary>Pores: place, radius, plugged.</summary>
    public IReadOnlyList<(double X, double Y, double Radius, bool Plugged)> Pores { get; private init; } = [];

    /// <summary>Rays: place and width.</summary>
    public IReadOnlyList<(double X, double Width)> Rays { get; private init; } = [];

    /// <summary>Pale bands, dashes and lines of the latewood.</summary>
    public IReadOnlyList<string> Bands { get; private init; } = [];

    /// <summary>The picture of a wood.</summary>
    public static EndGrainDrawing Of(EndGrain wood)
    {
        ArgumentNullException.ThrowIfNull(wood);
        var rings = Enumerable.Range(0, Rings).ToList();
        return new(wood)
        {
            Rays = [.. RaysOf(wood.Rays)],
            Bands = [.. rings.SelectMany(ring => BandsOf(wood.Latewood, Bottom(ring)))],
            Pores = [.. rings.SelectMany(ring => PoresOf(wood, ring))],
        };
    }

    private static double Bottom(int ring) => (ring + 1) * RingHeight;

    // A row of numbers that never clumps, the same each time.
    private static double Spread(int index) => (index * Golden) - Math.Floor(index * Golden);

    private static IEnumerable<(double X, double Width)> RaysOf(string rays)
    {
        var (fine, broad, width) = rays switch { "broad" => (20, 3, 6.0), "mixed" => (20, 5, 4.5), "many" => (0, 17, 4.0), "two" => (14, 8, 2.6), "clear" => (0, 16, 1.8), _ => (22, 0, 0.0) };
        for (var i = 0; i < fine; i++)
            yield return ((i + 0.3) * Size / fine, 0.7);
        for (var i = 0; i < broad; i++)
            yield return ((i + 0.5 + (0.35 * (Spread(i + 1) - 0.5))) * Size / broad, width);
    }

    private static IEnumerable<(double X, double Y, double Radius, bool Plugged)> PoresOf(EndGrain wood, int ring)
    {
        var bottom = Bottom(ring);
        for (var row = 0; row < wood.LargeRows; row++)
        {
            for (var i = 0; i < 19; i++)
                yield return ((i + 0.5 + (row % 2 * 0.5)) * Size / 19.5, bottom - 7.0 - (row * 11.0), Large - (0.5 * row), wood.Tyloses == "many" || (wood.Tyloses == "some" && i % 2 == 0));
        }

        var start = wood.LargeRows * 11.0 + 8.0;
        var height = RingHeight - start - 6.0;
        foreach (var pore in wood.Pores == PoreZone.Semi ? ByDegrees(bottom) : Latewood(wood.Latewood, wood.Pores, bottom - start, height, ring))
            yield return pore;
    }

    private static IEnumerable<(double X, double Y, double Radius, bool Plugged)> ByDegrees(double bottom)
    {
        for (var i = 0; i < 44; i++)
        {
            var up = (i + 0.5) / 44.0;
            yield return (4.0 + (Spread((i * 7) + 1) * (Size - 8.0)), bottom - 6.0 - (up * (RingHeight - 12.0)), 4.6 - (3.0 * up), false);
        }
    }

    private static IEnumerable<(double X, double Y, double Radius, bool Plugged)> Latewood(string kind, PoreZone zone, double bottom, double height, int ring)
    {
        var count = kind switch { "solitary" => 26, "dashes" => 16, "flame" => 110, "waves" => 120, "lines" => 18, "groups" => 60, _ => zone == PoreZone.Diffuse ? 150 : 60 };
        for (var i = 0; i < count; i++)
        {
            var (x, up) = (4.0 + (Spread((i * 13) + ring + 1) * (Size - 8.0)), Spread((i * 5) + 2));
            yield return kind switch
            {
                "flame" => (Flame(i) + (4.0 * up * (Spread(i + 3) - 0.5)), bottom - (up * height), 0.9, false),
                "waves" => (x, bottom - ((i % 3) + 0.5) * height / 3.0 + (3.0 * Math.Sin(x / 9.0)) + (1.6 * (Spread(i + 9) - 0.5)), 1.3, false),
                "groups" => (x + ((i % 3) * 4.2), bottom - (up * height), 2.2, false),
                "even" => (x, bottom - (up * height), 1.5, false),
                _ => (x, bottom - (up * height), Small, false),
            };
        }
    }

    private static double Flame(int index) => ((index % 9) + 0.5) * Size / 9.0;

    private static IEnumerable<string> BandsOf(string latewood, double bottom) => latewood switch
    {
        "dashes" => Enumerable.Range(0, 11).Select(i => $"M{Svg.N((i * 22) + (Spread(i + 1) * 8))} {Svg.N(bottom - RingHeight + 9 + (Spread(i + 4) * 12))}h11"),
        "lines" => Enumerable.Range(0, 6).Select(i => $"M0 {Svg.N(bottom - RingHeight + 7 + (i * 7))}H{Svg.N(Size)}"),
        _ => [],
    };
}
