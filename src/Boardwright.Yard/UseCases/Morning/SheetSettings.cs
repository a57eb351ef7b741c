using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Figures of the sheet's rules. All are common practice without a source [C]; those of the house may be set by their name.</summary>
internal static class SheetSettings
{
    /// <summary>Share of a charge's worth that a day without watching puts at risk.</summary>
    public static decimal UnwatchedShare(YardState state) => (decimal)(state.Setting("unwatched_charge_per_day") ?? 2.0) / 100m;

    /// <summary>Days between readings of a stack.</summary>
    public static int ReadingDays(YardState state) => (int)(state.Setting("days_between_readings") ?? 7.0);

    /// <summary>Colder than this the wood should be read again before anything is promised on it.</summary>
    public const double ColdWoodF = 40.0;

    /// <summary>Days within which an order is answered.</summary>
    public const int AnswerDays = 7;

    /// <summary>Days ahead an open order is looked at.</summary>
    public const int OrderDays = 45;

    /// <summary>Days ahead a heat shortage is looked for: as far as a forecast reaches.</summary>
    public const int HeatDays = 27;
}
