namespace Boardwright.Yard.Commands;

/// <summary>What stands in the command without a name in front, such as a FILE.</summary>
/// <param name="Name">In capitals, as in help.</param>
/// <param name="Help">One line for a person.</param>
/// <param name="IsRequired">The command refuses to run without it.</param>
public sealed record Argument(string Name, string Help, bool IsRequired = true);
