namespace Boardwright.Quantities.Reading;

/// <summary>Reads quantities written by people. Every value carries its unit; a bare number is refused, never guessed.</summary>
/// <remarks>
/// Each method takes the name of the field (for the refusal) and the text. Units ignore case; "8ft6in" adds up.
/// Where something was asked about, a length or thickness may be written as what was typed, an equals sign, and what was meant: 2.6 = 2.6m.
/// </remarks>
public static class Read
{
    private static readonly UnitTable Lengths = UnitTable.Of(
        "a length", "4/4, 1-1/8in, 28.6mm, 8ft, 8ft6in or 2.44m",
        ("m metre metres meter meters", 1.0, 0.0), ("mm", 0.001, 0.0), ("cm", 0.01, 0.0),
        ("in inch inches \" ″", 0.0254, 0.0), ("ft foot feet ' ′", 0.3048, 0.0));

    private static readonly UnitTable Volumes = UnitTable.Of(
        "a volume", "2.3m3, 964bf (nominal footage), 81ft3 or 6.5L",
        ("m3 m³", 1.0, 0.0), ("l litre litres liter liters", 0.001, 0.0), ("ml cm3 cm³", 1e-6, 0.0),
        ("ft3 ft³", 0.028316846592, 0.0), ("bf", BoardFeet.CubicMetresNominal, 0.0), ("mbf", 1000.0 * BoardFeet.CubicMetresNominal, 0.0));

    private static readonly UnitTable Masses = UnitTable.Of(
        "a weight", "3412g, 3.41kg or 7.5lb",
        ("kg", 1.0, 0.0), ("g", 0.001, 0.0), ("t tonne tonnes", 1000.0, 0.0), ("lb lbs", 0.45359237, 0.0), ("oz", 0.028349523125, 0.0));

    private static readonly UnitTable Temperatures = UnitTable.Of(
        "a temperature", "68F, 20C or 293.15K",
        ("k", 1.0, 0.0), ("c degc", 1.0, 273.15), ("f degf", 1.0 / 1.8, 273.15 - 32.0 / 1.8));

    private static readonly UnitTable Differences = UnitTable.Of(
        "a temperature difference", "10F, 5.6C or 5.6K",
        ("k c degc", 1.0, 0.0), ("f degf", 1.0 / 1.8, 0.0));

    private static readonly UnitTable Pressures = UnitTable.Of(
        "an absolute pressure", "101.3kPa, 60mbar, 50mmHg or 1.77inHg",
        ("pa", 1.0, 0.0), ("hpa mbar", 100.0, 0.0), ("kpa", 1000.0, 0.0), ("bar", 1e5, 0.0), ("mpa", 1e6, 0.0),
        ("mmhg torr", 133.322387415, 0.0), ("inhg", 3386.388640341, 0.0), ("atm", 101325.0, 0.0), ("psi", 6894.757293168, 0.0));

    private static readonly UnitTable Densities = UnitTable.Of(
        "a density", "1.10kg/L, 640kg/m3 or 40lb/ft3",
        ("kg/m3 kg/m³", 1.0, 0.0), ("kg/l g/cm3 g/cm³ g/ml", 1000.0, 0.0), ("lb/ft3 lb/ft³", 16.018463373960142, 0.0));

    private static readonly UnitTable Powers = UnitTable.Of(
        "a power", "18kW, 500W or 34000Btu/h",
        ("w", 1.0, 0.0), ("kw", 1000.0, 0.0), ("mw", 1e6, 0.0), ("btu/h", 0.29307107017222, 0.0));

    private static readonly UnitTable Times = UnitTable.Of(
        "a time", "36h, 90min or 12days",
        ("s sec seconds", 1.0, 0.0), ("min minutes", 60.0, 0.0), ("h hour hours", 3600.0, 0.0), ("d day days", 86400.0, 0.0));

    private static readonly UnitTable Speeds = UnitTable.Of(
        "an air speed", "1.5m/s or 300ft/min",
        ("m/s", 1.0, 0.0), ("ft/min fpm", 0.00508, 0.0), ("in/s", 0.0254, 0.0), ("mph", 0.44704, 0.0), ("km/h", 1.0 / 3.6, 0.0));

    private static readonly UnitTable Angles = UnitTable.Of(
        "an angle", "45deg",
        ("deg degrees °", Math.PI / 180.0, 0.0), ("rad", 1.0, 0.0));

    private static readonly UnitTable Percents = UnitTable.Of(
        "a percentage", "12%",
        ("% pct percent", 0.01, 0.0));

    /// <summary>A length; "5/4" without a unit means quarters of an inch.</summary>
    public static Outcome<Length> Length(string what, string text) =>
        NominalQuarters(Meant(text)) is { } quarters
            ? Quantities.Length.FromInches(quarters / 4.0)
            : From(Lengths, what, Meant(text), Quantities.Length.Accepts, Quantities.Length.FromMetres, given => $"0 to {Lengths.InUnitOf(given, Quantities.Length.Longest)}");

    /// <summary>A nominal thickness such as 4/4 or 8/4.</summary>
    public static Outcome<NominalThickness> NominalThickness(string what, string text) =>
        NominalQuarters(Meant(text)) is >= 1 and <= 48 and var quarters
            ? Quantities.NominalThickness.FromQuarters(quarters)
            : new Refusal(what, text, "a nominal thickness in quarters of an inch, 1/4 to 48/4, such as 4/4 or 8/4");

    /// <summary>A volume; "964bf" is read as nominal footage.</summary>
    public static Outcome<Volume> Volume(string what, string text) =>
        From(Volumes, what, text, Quantities.Volume.Accepts, Quantities.Volume.FromCubicMetres, "0 to 1e6 m3");

    /// <summary>A mass.</summary>
    public static Outcome<Mass> Mass(string what, string text) =>
        From(Masses, what, Meant(text), Quantities.Mass.Accepts, Quantities.Mass.FromKilograms, "0 to 1e7 kg");

    /// <summary>A temperature.</summary>
    public static Outcome<Temperature> Temperature(string what, string text) =>
        From(Temperatures, what, text, Quantities.Temperature.Accepts, Quantities.Temperature.FromKelvins, "absolute zero to 1726 C");

    /// <summary>A difference of temperatures, such as a wet-bulb depression.</summary>
    public static Outcome<TemperatureDifference> TemperatureDifference(string what, string text) =>
        From(Differences, what, text, kelvins => kelvins is >= -2000.0 and <= 2000.0, Quantities.TemperatureDifference.FromKelvins, "-2000 to 2000 K");

    /// <summary>An absolute pressure.</summary>
    public static Outcome<Pressure> Pressure(string what, string text) =>
        From(Pressures, what, text, Quantities.Pressure.Accepts, Quantities.Pressure.FromPascals, "0 to 10 MPa");

    /// <summary>A density.</summary>
    public static Outcome<Density> Density(string what, string text) =>
        From(Densities, what, text, Quantities.Density.Accepts, Quantities.Density.FromKilogramsPerCubicMetre, "0 to 30000 kg/m3");

    /// <summary>A power.</summary>
    public static Outcome<Power> Power(string what, string text) =>
        From(Powers, what, text, Quantities.Power.Accepts, Quantities.Power.FromWatts, "0 to 1e9 W");

    /// <summary>A length of time.</summary>
    public static Outcome<Elapsed> Elapsed(string what, string text) =>
        From(Times, what, text, Quantities.Elapsed.Accepts, Quantities.Elapsed.FromSeconds, "0 to 1e11 s");

    /// <summary>An air speed.</summary>
    public static Outcome<Speed> Speed(string what, string text) =>
        From(Speeds, what, text, Quantities.Speed.Accepts, Quantities.Speed.FromMetresPerSecond, "0 to 200 m/s");

    /// <summary>An angle.</summary>
    public static Outcome<Angle> Angle(string what, string text) =>
        From(Angles, what, text, Quantities.Angle.Accepts, Quantities.Angle.FromRadians, "-360 to 360 deg");

    /// <summary>A moisture content in percent of the oven-dry mass.</summary>
    public static Outcome<MoistureContent> MoistureContent(string what, string text) =>
        From(Percents, what, Percent(text), Quantities.MoistureContent.Accepts, Quantities.MoistureContent.FromFraction, "0 to 500 %");

    /// <summary>A relative humidity in percent.</summary>
    public static Outcome<RelativeHumidity> RelativeHumidity(string what, string text) =>
        From(Percents, what, Percent(text), Quantities.RelativeHumidity.Accepts, Quantities.RelativeHumidity.FromFraction, "0 to 100 %");

    /// <summary>A share in percent.</summary>
    public static Outcome<Share> Share(string what, string text) =>
        From(Percents, what, Percent(text), Quantities.Share.Accepts, Quantities.Share.FromFraction, "0 to 100 %");

    /// <summary>A plain number, for what has no dimension.</summary>
    public static Outcome<double> Number(string what, string text)
    {
        var rest = text.AsSpan().Trim();
        return NumberText.TryTake(ref rest, out var value) && rest.Trim().IsEmpty ? value : new Refusal(what, text, "a number, such as 3 or 0.25");
    }

    private static string Meant(string text) => text[(text.LastIndexOf('=') + 1)..];

    private static Outcome<T> From<T>(UnitTable table, string what, string text, Func<double, bool> accepts, Func<double, T> make, string range) => From(table, what, text, accepts, make, _ => range);

    private static Outcome<T> From<T>(UnitTable table, string what, string text, Func<double, bool> accepts, Func<double, T> make, Func<string, string> range)
    {
        if (table.Read(text) is not { } canonical)
        {
            return table.Refuse(what, text);
        }

        return accepts(canonical) ? make(canonical) : new Refusal(what, text, range(text));
    }

    // Percentages have no dimension, so a bare number of percent is taken; between 0 and 1 it could be a fraction, and is refused.
    private static string Percent(string text)
    {
        var rest = text.AsSpan().Trim();
        return NumberText.TryTake(ref rest, out var value) && rest.Trim().IsEmpty && value is 0.0 or >= 1.0 ? text + "%" : text;
    }

    private static int? NominalQuarters(string text)
    {
        var trimmed = text.AsSpan().Trim();
        return trimmed.EndsWith("/4") && int.TryParse(trimmed[..^2], System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var quarters)
            ? quarters
            : null;
    }
}
