using System.Globalization;
using System.Text.Json;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A field of a form of the house: a column of the plain table of the same name.</summary>
/// <param name="Column">The column, as import reads it.</param>
/// <param name="Label">In words.</param>
/// <param name="Hint">Unit or example.</param>
public sealed record HouseColumn(string Column, string Label, string Hint = "")
{
    /// <summary>All it may be; empty where anything may be written.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];
}

/// <summary>One part of how a yard is set up: a plain table, and the same filled by a form.</summary>
/// <param name="Name">The table, as import reads it.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Add">What the key for another row says; empty where there is only one.</param>
/// <param name="Why">What cannot be done without it.</param>
/// <param name="Key">Name of the row a fact makes, null for a fact of another table.</param>
/// <param name="Said">The fact in words.</param>
/// <param name="Columns">Its fields.</param>
public sealed record HouseTable(string Name, string Title, string Add, string Why, Func<Fact, string?> Key, Func<Fact, string> Said, IReadOnlyList<HouseColumn> Columns)
{
    /// <summary>What waits for each table in a new yard, the first thing first.</summary>
    private static readonly IReadOnlyList<(string Before, IReadOnlyList<string> Tables)> Steps =
    [
        ("Before the first log", ["people", "yard"]), ("Before the first stack", ["places"]), ("Before the first charge", ["kilns"]),
        ("For the season’s plan and forecasts", ["work-days", "boilers", "normals"]), ("For worth and cost", ["prices", "settings"]),
    ];

    /// <summary>What waits for it in a new yard, in words.</summary>
    public string Before => Steps[Step].Before;

    /// <summary>Place of that in the order a yard is set up in.</summary>
    internal int Step => Enumerable.Range(0, Steps.Count).First(step => Steps[step].Tables.Contains(Name));

    /// <summary>Place among the tables of its step.</summary>
    internal int Turn => Steps[Step].Tables.ToList().IndexOf(Name);

    /// <summary>The tables of a house, in the order in which a new yard needs them.</summary>
    public static IReadOnlyList<HouseTable> All { get; } =
    [
        Of<YardDescribed>("yard", "Yard and mill", "", "sizes of logs are checked against it, cutting plans take its kerf", _ => "", f => Text($"{f.Name}, {f.Place}: logs up to {f.ThroatMm / 25.4:0.#} in through and {f.LogLengthMaxM / 0.3048:0.#} ft long, kerf {f.KerfMm / 25.4:0.000} in, {f.AltitudeM:0} m above the sea"),
            new("name", "Name of the yard"), new("place", "Where it lies"), new("altitude_m", "Height above the sea", "m, such as 200"), new("latitude_deg", "Latitude", "degrees north, such as 44"), new("throat", "Thickest log the mill takes", "such as 36 in"),
            new("log_len_max", "Longest log it takes", "such as 18 ft"), new("kerf", "Kerf of its blade", "such as 0.055 in"), new("planer_width", "Widest board the planer takes", "such as 24 in")),
        Of<PersonNamed>("people", "People", "Write somebody in", "every entry says who wrote it", f => f.Person, f => Text($"{f.Role}; {f.PaidPerHourMoney:0.##} an hour{(f.LeadsLoading ? "; leads loading" : f.LoadsKilns ? "; loads kilns" : "")}"),
            new("person", "Name"), new("role", "Does what", "such as yard and kilns"), new("paid_per_hour_money", "An hour costs", "money; 0 where you do not reckon it"), YesOrNo("loads_kilns", "Loads kilns"), YesOrNo("leads_loading", "Leads loading")),
        Of<PlaceNamed>("places", "Places", "Name a place", "wood lies somewhere; a shed dries slower than a row", f => f.Place, f => f.Type.ToString() switch { "LogYard" => "log yard", var word => word.ToLowerInvariant() },
            new("place", "Name"), Word<PlaceKind>("type", "What it is"), YesOrNo("signal", "A phone has signal there")),
        Of<WorkDaySet>("work-days", "Working days", "Set a day", "the plan loads and unloads on working days", f => f.Day.ToString(), f => Text($"{f.From:HH\\:mm} to {f.To:HH\\:mm}, {f.Hours:0.#} h: {string.Join(", ", f.People)}"),
            Word<DayOfWeek>("day", "Day"), new("from", "From", "07:30"), new("to", "To", "16:00"), new("hours", "Hours of work", "h"), new("people", "Who", "names parted by semicolons")),
        Of<KilnInstalled>("kilns", "Kilns", "Write a kiln in", "charges and the plan", f => f.Kiln, f => Text($"{Kind(f.Type)}, {f.CapacityBf:#,0} bf of 4/4, pieces up to {f.PieceLengthMaxM / 0.3048:0.#} ft, at most {f.DryBulbMaxC * 1.8 + 32.0:0} °F, {f.HeatKw:0.#} kW"),
            new("kiln", "Name"), Word<KilnType>("type", "Kind"), new("capacity_44_bf", "Room", "bf of 4/4 boards on 3/4 in stickers, such as 2500"), new("max_piece", "Longest piece", "such as 16 ft"),
            new("max_dry_bulb", "Hottest air it reaches (dry bulb)", "such as 165 F"), new("heat_kw", "Heat it can take in", "kW, of its coil, heater or generator"), new("heat_at_water", "If a boiler heats it: with water at", "such as 82 C; nothing for electric"), new("stack_places", "Places for stacks", "how many stand in it at once, such as 2"),
            new("place_width", "Width of a place", "such as 48 in"), new("place_length", "Length of a place", "such as 16 ft"), new("place_height", "Height of a place", "such as 32 in"), new("fill_of_layers", "Wood in a layer", "share of its width that is not gaps, such as 0.85"),
            new("load_h", "Loading takes two people", "hours, such as 4"), new("unload_h", "Unloading takes two people", "hours, such as 3"), new("fans_kw", "Fans or pumps", "kW"), new("fixed_per_day_money", "A day costs, running or not", "money; 0 where you do not reckon it"),
            new("holding_heat_kw", "Heat that keeps it warm", "outside °C : kW, such as 5:6.7; -14:9.0; nothing where nobody measured it"), new("load_max_kg", "Most weight it carries", "kg, of its floor, truck or rails; nothing where nobody says"), new("note", "Remark")),
        Of<BoilerInstalled>("boilers", "Boilers", "Write a boiler in", "heat left for the kilns", f => f.Boiler, f => Text($"{f.SteadyOutputKw:0} kW{(f.StokedEveryHours is { } every ? $", stoked every {every:0.#} h" : "")}"),
            new("boiler", "Name"), new("steady_output_kw", "Gives steadily", "kW"), new("stoked_every_h", "Stoked every", "h")),
        Of<ClimateNormalSet>("normals", "Air of the months", "Set a month", "forecasts of drying go by it where no forecast reaches", f => f.Month.ToString(CultureInfo.InvariantCulture), f => Text($"{CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(f.Month)}: {f.MeanC:0.#} °C, {f.MeanRhPct:0} % humidity"),
            new("month", "Month", "1 to 12"), new("mean_c", "Mean temperature", "°C"), new("mean_rh_pct", "Mean humidity", "%")),
        Of<SpeciesPriced>("prices", "Prices", "Price a wood", "worth of logs, stacks and days late", f => f.Species, f => Text($"dry FAS {f.DryFasMoney:0.00}, 1C {f.Dry1cMoney:0.00}, 2A {f.Dry2aMoney:0.00}; green {f.GreenFasMoney:0.00}, {f.Green1cMoney:0.00}, {f.Green2aMoney:0.00} a bf"),
            new("species", "Wood") { Choices = [.. SpeciesTable.All.Select(species => species.CommonName).Order(StringComparer.Ordinal)] }, new("dry_fas_money", "Dry, FAS", "money a bf"), new("dry_1c_money", "Dry, No. 1 Common", "money a bf"), new("dry_2a_money", "Dry, No. 2A", "money a bf"), new("green_fas_money", "Green, FAS", "money a bf"),
            new("green_1c_money", "Green, No. 1 Common", "money a bf"), new("green_2a_money", "Green, No. 2A", "money a bf"), new("falldown_boards_pct", "Boards lost to defects and trim", "low/likely/high %, such as 3/5/9"), new("falldown_slabs_pct", "Slabs lost", "low/likely/high %, or nothing")),
        Of<SettingSet>("settings", "Figures", "Set a figure", "costs, limits and shares the computation takes", f => f.Name, f => Text($"{f.Value:0.####} {f.Unit}"),
            new("name", "Name in the book"), new("value", "Value"), new("unit", "Unit")),
    ];

    private static HouseTable Of<T>(string name, string title, string add, string why, Func<T, string> key, Func<T, string> said, params HouseColumn[] columns)
        where T : Fact => new(name, title, add, why, fact => fact is T one ? key(one) : null, fact => said((T)fact), columns);

    private static HouseColumn YesOrNo(string column, string label) => new(column, label) { Choices = ["no", "yes"] };

    // As the table writes the word, so that what stands is found among the choices.
    private static HouseColumn Word<T>(string column, string label)
        where T : struct, Enum => new(column, label) { Choices = [.. Enum.GetNames<T>().Select(JsonNamingPolicy.SnakeCaseLower.ConvertName)] };

    private static string Kind(KilnType type) => type switch
    {
        KilnType.RadioFrequencyVacuum => "radio-frequency vacuum",
        KilnType.Dehumidification => "dehumidification",
        _ => "conventional",
    };

    private static string Text(FormattableString words) => FormattableString.Invariant(words);
}
