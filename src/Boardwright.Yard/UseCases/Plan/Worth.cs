using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using BookState = Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What drying a stack is worth: its value dry less its value green, or the custom rate for a customer's wood.</summary>
internal static class PlanWorth
{
    private const double DaysPerYear = 365.0;

    /// <summary>Money the stack gains when it is dried.</summary>
    public static decimal Gain(YardState state, BookState.Stack stack, BoardFeet yield)
    {
        if (stack.Owner != "mill")
        {
            var rate = state.Setting(stack.Thickness.Quarters <= 5 ? "custom_kiln_drying_to_5_4" : "custom_kiln_drying_from_6_4") ?? 0.0;
            return Cents(rate * stack.Footage.Count);
        }

        return Cents(Math.Max(0.0, Value(state, stack, dry: true) - Value(state, stack, dry: false)) * yield.Count);
    }

    /// <summary>Interest on its value for each day it waits.</summary>
    public static decimal WaitingPerDay(YardState state, BookState.Stack stack, BoardFeet yield, double percentPerYear) =>
        stack.Owner == "mill" ? Cents(Value(state, stack, dry: true) * yield.Count * percentPerYear / 100.0 / DaysPerYear) : 0m;

    /// <summary>What a board foot of such wood sells for dry; 0 where the yard has no price.</summary>
    public static double DryMoneyPerBf(YardState state, BookState.Stack stack) => Value(state, stack, dry: true);

    // Per board foot: boards of the house's own mix of grades, slabs by their own price.
    private static double Value(YardState state, BookState.Stack stack, bool dry)
    {
        if (stack.Product is Product.Slabs or Product.Slab or Product.Boule)
        {
            var slab = dry ? "slab_dry" : "slab_green";
            return state.Setting($"{slab}_{Underlined(stack.Species)}") ?? state.Setting(slab) ?? 0.0;
        }

        if (!state.Prices.TryGetValue(stack.Species.CommonName, out var price))
        {
            return 0.0;
        }

        var fas = (state.Setting("no_1_common_and_better_fas_share") ?? 40.0) / 100.0;
        var premium = 1.0 + (state.Setting($"premium_{stack.Thickness.Quarters}_4") ?? 0.0) / 100.0;
        return premium * (dry ? fas * (double)price.DryFasMoney + (1.0 - fas) * (double)price.Dry1cMoney : fas * (double)price.GreenFasMoney + (1.0 - fas) * (double)price.Green1cMoney);
    }

    private static string Underlined(Species species) => species.CommonName.Replace(' ', '_');

    private static decimal Cents(double money) => Math.Round((decimal)money, 2);
}
