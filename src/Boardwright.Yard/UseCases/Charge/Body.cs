using Boardwright.Drying;
using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A kiln of the yard with its charge, as it cools and warms.</summary>
/// <param name="Inertia">Heat it holds and loses.</param>
/// <param name="OvenDry">Wood in it without water.</param>
/// <param name="Moisture">Mean moisture, by samples or readings.</param>
public sealed record KilnBody(KilnInertia Inertia, Mass OvenDry, MoistureContent Moisture)
{
    /// <summary>The body of a running charge; null in a kiln that is not on the boilers, or without a noted holding heat or a moisture.</summary>
    public static KilnBody? Of(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        var kiln = state.Kilns[charge.Kiln];
        var stacks = charge.StacksInside.Select(tag => state.Stacks[tag]).ToList();
        if (YardHeat.Holding(kiln) is not { } holding || (charge.SampleMean ?? Mean(stacks)) is not { } moisture)
            return null;

        var ovenDry = Mass.FromKilograms(stacks.Sum(stack => SawnWood.Volume(state, stack, stack.Footage).CubicMetres * 1000.0 * stack.Species.BasicSpecificGravity));
        var structure = KilnStructure.ForCapacity(BoardFeet.From(kiln.Installed.CapacityBf)) with { LossWattsPerKelvin = holding.Observed.Watts / (holding.Inside - holding.Outside).Kelvins };
        return new(KilnInertia.Of(ovenDry, moisture, charge.Settings.LastOrDefault()?.DryBulb ?? holding.Inside, structure), ovenDry, moisture);
    }

    private static MoistureContent? Mean(List<Stack> stacks)
    {
        var read = stacks.Where(stack => stack.Moisture?.Mean is not null).ToList();
        return read.Count == 0 ? null : MoistureContent.FromFraction(read.Average(stack => stack.Moisture!.Mean!.Value.Fraction));
    }
}
