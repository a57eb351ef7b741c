using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Drying.Tests;
using Boardwright.Drying.Tests.Board;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;

namespace Boardwright.Validation.Tests;

/// <summary>Drying in the yard and in kilns.</summary>
internal static class DryingSubjects
{
    private const int Steps = 2000;
    private const int Cells = 64;

    public static IReadOnlyList<Subject> All { get; } =
    [
        new("outdoor-emc", "Outdoor equilibrium moisture content by month", "air-drying", "outdoor-emc", [], false, OfOutdoors),
        new("diffusion", "The board model against series solutions", "board-drying", "diffusion", [], false, OfDiffusion),
        new("air-times", "Air-drying times", "air-drying", "air-drying", ["air_period_days", "air_season_days"], true, OfAirTimes),
        new("kiln-times", "Kiln-drying times to six percent", "kiln-time", "air-drying", ["kiln_period_days", "time_ratio"], true, OfKilnTimes),
        new("safe-rate", "Safe daily loss", "safe-rate", "safe-rate", [], true, OfSafeRate),
        new("schedule-codes", "Kiln schedules from their codes", "kiln-schedule", "schedules", ["dry_bulb_f", "depression_f", "wet_bulb_floor90_f", "steps", "species_code"], false, OfCode),
        new("schedule-steps", "Kiln schedules of species, step by step", "kiln-schedule", "schedules",
            ["step_mc_above_pct", "step_dry_bulb_f", "step_wet_bulb_f", "step_wet_bulb_floor90_f", "step_rh_pct", "step_emc_pct"], false, OfStep),
        new("finish", "Equalizing and conditioning", "equalize-and-condition", "schedules",
            ["equalize_from_driest_pct", "equalize_emc_pct", "equalize_until_wettest_pct", "condition_emc_pct", "finish_air_emc_pct"], false, OfFinish),
        new("stress", "Stress test", "stress-test", "stress", [], false, OfStress),
        new("redry", "Drying again", "redry", "redry", [], true, OfRedry),
    ];

    private static Ours OfOutdoors(PublishedRow row) => 100.0 * new DailyWeather(new DateOnly(2013, 1, 1), row["t_c"], row["rh_pct"], null).EquilibriumFraction;

    private static Ours OfDiffusion(PublishedRow row)
    {
        Boardwright.Drying.Board.BoardEnsemble Board(double fo) => LinearBoard.After(row["bi"], fo, Steps, Cells);
        return row.Quantity switch
        {
            "mean_difference_left" => Board(row["fo"]).Average[0],
            "share_exchanged" => 1.0 - Board(row["fo"]).Average[0],
            "difference_left" => LinearBoard.At(Board(row["fo"]), row["x"]),
            "half_time_fo" => HalfTime(fo => Board(fo).Average[0]),
            _ => row.Unknown(),
        };
    }

    private static double HalfTime(Func<double, double> left)
    {
        var (early, late) = (0.0, 1.0);
        for (var i = 0; i < 24; i++)
        {
            var middle = 0.5 * (early + late);
            (early, late) = left(middle) > 0.5 ? (middle, late) : (early, middle);
        }

        return 0.5 * (early + late);
    }

    // A stack of good and one of bad season; where a season is cited, the stacks of its months.
    private static Ours OfAirTimes(PublishedRow row)
    {
        var species = Given.Species(row.Text("species"));
        var weather = row.Text("climate") == "north" ? Climate.North : Climate.Central;
        DateOnly[] starts = row.Quantity == "air_season_days" ? [new(2025, 4, 1), new(2025, 5, 1), new(2025, 6, 1)] : [new(2025, 5, 1), new(2025, 9, 15)];
        return new([.. starts.Select(start => Fit.AirDays(species, weather, start, DryingCoefficients.For(species).AirM2PerS))]);
    }

    private static Ours OfKilnTimes(PublishedRow row)
    {
        var species = Given.Species(row.Text("species"));
        double Hours(double inches) => Given.Done(KilnDrying.Forecast(new KilnDryingInput
        {
            Species = species,
            Thickness = Length.FromInches(inches),
            From = MoistureContent.FromPercent(25.0),
            To = MoistureContent.FromPercent(8.0),
        })).HoursP50;
        return row.Quantity == "time_ratio" ? Hours(row["to_in"]) / Hours(row["from_in"]) : Fit.KilnDays(species, row, DryingCoefficients.For(species).KilnM2PerS);
    }

    private static Ours OfSafeRate(PublishedRow row) => Given.Done(SafeRate.For(Given.Species(row.Text("species")), Given.Thickness(row.Text("thickness")))).DailyLossPercent;

    private static Ours OfCode(PublishedRow row)
    {
        if (row.Quantity == "species_code")
            return Given.Done(KilnSchedule.For(Given.Species(row.Text("species")), Given.Thickness(row.Text("thickness")))).Name;

        var schedule = KilnSchedule.Assemble(Given.Done(KilnCode.Parse("code", row.Text("code"))));
        if (row.Quantity == "steps")
            return schedule.Steps.Count;

        var step = schedule.StepAt(row.Moisture("controlling_mc_pct"));
        return row.Quantity switch
        {
            "dry_bulb_f" => step.DryBulbFahrenheit,
            "depression_f" => step.DepressionFahrenheit,
            "wet_bulb_floor90_f" => step.WetBulbFloored90Fahrenheit,
            _ => row.Unknown(),
        };
    }

    private static Ours OfStep(PublishedRow row)
    {
        var step = Given.Done(KilnSchedule.For(Given.Species(row.Text("species")), Given.Thickness(row.Text("thickness")))).Steps[(int)row["step"] - 1];
        return row.Quantity switch
        {
            "step_mc_above_pct" => step.Above.Percent,
            "step_dry_bulb_f" => step.DryBulbFahrenheit,
            "step_wet_bulb_f" => step.WetBulbFahrenheit,
            "step_wet_bulb_floor90_f" => step.WetBulbFloored90Fahrenheit,
            "step_rh_pct" => step.Air.Humidity.Percent,
            "step_emc_pct" => step.Air.Emc!.Value.Percent,
            _ => row.Unknown(),
        };
    }

    private static Ours OfFinish(PublishedRow row)
    {
        if (row.Quantity == "finish_air_emc_pct")
            return Given.Done(AirState.FromWetBulb(row.Temperature("dry_bulb"), row.Temperature("wet_bulb"), AirState.StandardPressure)).Emc!.Value.Percent;

        var rule = row.Has("rule") && row.Text("rule") == "GTR57" ? FinishRule.Gtr57 : FinishRule.Ah188;
        var finish = Given.Done(KilnFinish.For(row.Moisture("target_mc_pct"), rule, row.Has("wood") && row.Text("wood") == "softwood" ? KilnFinish.SoftwoodConditionPoints : KilnFinish.HardwoodConditionPoints));
        return row.Quantity switch
        {
            "equalize_from_driest_pct" => finish.EqualizeFromDriest.Percent,
            "equalize_emc_pct" => finish.EqualizeEmc.Percent,
            "equalize_until_wettest_pct" => finish.EqualizeUntilWettest.Percent,
            "condition_emc_pct" => finish.ConditionEmc.Percent,
            _ => row.Unknown(),
        };
    }

    private static Ours OfStress(PublishedRow row) => row.Quantity switch
    {
        "prongs" => StressTest.ProngsFor(Given.Thickness(row.Text("thickness"))),
        "verdict" => StressTest.Judge(Enum.Parse<ProngTurn>(row.Text("turn")), row.Text("settled") == "yes").ToString(),
        "conditioning_h" => StressTest.UsualConditioning(Given.Thickness(row.Text("thickness"))).Hours,
        _ => row.Unknown(),
    };

    private static Ours OfRedry(PublishedRow row)
    {
        var redry = Given.Done(Redry.For(new() { Species = Given.Species("black cherry"), Thickness = Given.Thickness("4/4"), From = row.Moisture("now_pct"), To = row.Moisture("target_pct") }));
        return row.Quantity switch
        {
            "first_emc_pct" => redry.First.Emc.Percent,
            "second_emc_pct" => redry.Second.Emc.Percent,
            "first_dry_bulb_f" => redry.First.DryBulb.Fahrenheit,
            "second_dry_bulb_f" => redry.Second.DryBulb.Fahrenheit,
            "first_hours" => new Ours([Redry.FirstLeast.Hours, Redry.FirstMost.Hours]),
            _ => row.Unknown(),
        };
    }
}
