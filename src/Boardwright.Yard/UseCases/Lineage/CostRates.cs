using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>What the yard's own money tables say an hour, a board foot, a kilowatt-hour and a day cost. Each is an editable setting of the book.</summary>
public sealed record CostRates
{
    /// <summary>People at the band mill, and at a kiln's door.</summary>
    public const int Crew = 2;

    private const double DaysAYear = 365.0;

    /// <summary>An hour of one of the people who saw, stack and load, all on-costs in: the mean of those who may lead loading.</summary>
    public required double PersonHourMoney { get; init; }

    public required double MillHourMoney { get; init; }

    public required double MillBfPerHour { get; init; }

    public required double BladeMoneyPerBf { get; init; }

    public required double LogYardMoneyPerBf { get; init; }

    public required double EndCoatMoneyPerBf { get; init; }

    public required double StickersMoneyPerBf { get; init; }

    public required double StickerBfPerPersonHour { get; init; }

    public required double ElectricityMoneyPerKwh { get; init; }

    /// <summary>Wood burnt, as delivered to the water.</summary>
    public required double FuelMoneyPerKwh { get; init; }

    /// <summary>Stoking, spread over the heat between two stokings at steady output.</summary>
    public required double StokingMoneyPerKwh { get; init; }

    public required double LineToPlatenShare { get; init; }

    public required double PlatenToWoodShare { get; init; }

    public required double PlanerHourMoney { get; init; }

    public required double PlanerBfPerHour { get; init; }

    public required double PackingMoneyPerBf { get; init; }

    public required double InterestShareADay { get; init; }

    /// <summary>The rates of a yard, or the settings that are missing.</summary>
    public static Outcome<CostRates> Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var missing = new List<Refusal>();
        double Get(string name)
        {
            if (state.Setting(name) is { } value)
                return value;
            missing.Add(new("setting", $"no {name}", "a yard whose money tables hold it"));
            return 1.0;
        }

        var people = state.People.Values.Where(person => person.LeadsLoading).DefaultIfEmpty(state.People.Values.FirstOrDefault()).ToList();
        if (people[0] is null)
            missing.Add(new("people", "none", "at least one person with pay per hour"));
        var hour = (double)people.Average(person => person?.PaidPerHourMoney ?? 0m);
        var boiler = state.Boilers.Values.Where(b => b.Down is null).Concat(state.Boilers.Values).Select(b => b.Installed).FirstOrDefault();
        var cord = new FuelStock(
            1.0, Share.FromFraction(state.Fuel?.Count.SolidShare ?? 1.0), Density.FromKilogramsPerCubicMetre(Get("oven_dry_per_solid")), Get("wood_heating_value"), Share.FromPercent(Get("fuel_delivered")));
        var rates = new CostRates
        {
            PersonHourMoney = hour,
            MillHourMoney = Get("mill_machine"),
            MillBfPerHour = Get("mill_output"),
            BladeMoneyPerBf = Get("blade_resharpened") / Get("bf_per_sharpening"),
            LogYardMoneyPerBf = Get("log_yard_and_loader"),
            EndCoatMoneyPerBf = Get("end_coating"),
            StickersMoneyPerBf = Get("stickers"),
            StickerBfPerPersonHour = Get("sticker_output"),
            ElectricityMoneyPerKwh = Get("electricity"),
            FuelMoneyPerKwh = Get("fuel_own_slabs") / cord.KilowattHours,
            StokingMoneyPerKwh = boiler is { StokedEveryHours: { } every } ? Get("stoking") * hour / (boiler.SteadyOutputKw * every) : 0.0,
            LineToPlatenShare = Get("rf_line_to_platen") / 100.0,
            PlatenToWoodShare = Get("rf_platen_to_wood") / 100.0,
            PlanerHourMoney = Get("planer_machine"),
            PlanerBfPerHour = Get("planer_output"),
            PackingMoneyPerBf = Get("tally_packing_storage"),
            InterestShareADay = Get("interest") / 100.0 / DaysAYear,
        };
        return missing.Count > 0 ? new Outcome<CostRates>.Refused(missing) : rates;
    }
}
