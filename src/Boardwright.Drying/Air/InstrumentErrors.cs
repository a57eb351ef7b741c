using Boardwright.Drying.Board;

namespace Boardwright.Drying;

/// <summary>What all readings of one kind on a stack have wrong together, as each board of the ensemble supposes it.</summary>
/// <remarks>
/// A wrong species setting, a wrong dry weight or samples that are not like the stack do not go away by reading again: they are unknowns of their own, one a kind
/// of reading, held in units of their standard deviation and learned from the readings like the rest (state augmentation). So ten readings of one doubtful
/// meter do not make the forecast ten times as sure.
/// </remarks>
internal sealed class InstrumentErrors(int members, ulong seed)
{
    private const ulong FirstBranch = 20;

    private readonly Dictionary<ReadingKind, double[]> known = [];

    /// <summary>By board, standard deviations.</summary>
    public double[] Of(ReadingKind kind)
    {
        if (!known.TryGetValue(kind, out var errors))
            known[kind] = errors = Scatter.Apart(members, seed, FirstBranch + (ulong)kind, 1, 2, 3, 6);

        return errors;
    }
}
