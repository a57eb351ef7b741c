using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One pack of a charge as it stands in the kiln.</summary>
/// <param name="Stack">Whose boards.</param>
/// <param name="Courses">Courses of boards, one over the other.</param>
/// <param name="ThicknessIn">Rough thickness, inches.</param>
public sealed record ChargePack(Stack Stack, int Courses, double ThicknessIn);

/// <summary>How a charge fills its kiln, reckoned from the footage: which board lies where is not on record.</summary>
public static class ChargePacks
{
    /// <summary>The packs, place by place.</summary>
    public static IReadOnlyList<ChargePack> Of(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        var room = ChargeLay.Places(state.Kilns[charge.Kiln].Installed);
        var packs = new List<ChargePack>();
        foreach (var stack in charge.StacksInside.DefaultIfEmpty().Select(tag => tag ?? "").Concat(charge.IsRunning ? [] : charge.Stacks).Where(tag => tag.Length > 0).Distinct().Select(tag => state.Stacks[tag]))
        {
            var most = room.LayersMost(stack.Thickness);
            var bf = charge.IsRunning ? stack.Footage.Count : charge.FootageIn.Count / charge.Stacks.Count;
            var courses = Math.Max(1, (int)Math.Ceiling(bf / room.OfLayer(stack.Thickness).Count));
            var places = (courses + most - 1) / most;
            for (var place = 0; place < places; place++)
            {
                packs.Add(new(stack, (courses / places) + (place < courses % places ? 1 : 0), stack.Thickness.Inches));
            }
        }

        return packs;
    }
}
