namespace Boardwright.Yard.Commands;

/// <summary>The word a mistyped one most likely meant.</summary>
public static class NearestWord
{
    /// <summary>The accepted word with the fewest letters to change, leave out, add or swap; null when none is near.</summary>
    public static string? Of(string given, IEnumerable<string> accepted)
    {
        ArgumentNullException.ThrowIfNull(given);
        var (best, least) = ((string?)null, 1 + given.Length / 3);
        foreach (var word in accepted)
        {
            var steps = Steps(given.ToUpperInvariant(), word.ToUpperInvariant());
            if (steps <= least)
                (best, least) = (word, steps - 1);
        }

        return best;
    }

    // Edit distance that counts two neighbours swapped as one step.
    private static int Steps(string left, string right)
    {
        var steps = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
        {
            for (var j = 0; j <= right.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    steps[i, j] = i + j;
                    continue;
                }

                var changed = steps[i - 1, j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1);
                steps[i, j] = Math.Min(changed, 1 + Math.Min(steps[i - 1, j], steps[i, j - 1]));
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    steps[i, j] = Math.Min(steps[i, j], steps[i - 2, j - 2] + 1);
            }
        }

        return steps[left.Length, right.Length];
    }
}
