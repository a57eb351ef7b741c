using Boardwright.Quantities;

namespace Boardwright.Yard.UseCases;

/// <summary>A refusal that is a question: what was typed is kept when the person says that it is right.</summary>
public static class Question
{
    /// <summary>How the accepted values of a question end.</summary>
    public const string Keep = "or keep it as it is";

    /// <summary>True when every reason is a question.</summary>
    public static bool Asks(IReadOnlyList<Refusal> reasons)
    {
        ArgumentNullException.ThrowIfNull(reasons);
        return reasons.Count > 0 && reasons.All(reason => reason.Accepted.EndsWith(Keep, StringComparison.Ordinal));
    }

    internal static Refusal Of(string what, string given, string accepted) => new(what, given, $"{accepted.TrimEnd('.')}; {Keep}");
}
