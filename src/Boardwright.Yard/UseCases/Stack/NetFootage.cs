using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Yard.UseCases;

/// <summary>What a tally becomes as the boards dry: net footage follows the width, which shrinks tangentially in flatsawn boards and radially in quartersawn.</summary>
/// <remarks>Nothing is ever added back for shrinkage: kiln-dried hardwood is sold on net footage (National Conference on Weights and Measures, 1977).</remarks>
public static class NetFootage
{
    public static Outcome<BoardFeet> At(Species species, bool quartersawn, BoardFeet now, MoistureContent from, MoistureContent to) =>
        Shrinkage.Total(species, quartersawn ? ShrinkageDirection.Radial : ShrinkageDirection.Tangential)
            .Then(total => (Outcome<BoardFeet>)BoardFeet.From(now.Count * Shrinkage.Ratio(total, species.ShrinkageStart, from, to)));
}
