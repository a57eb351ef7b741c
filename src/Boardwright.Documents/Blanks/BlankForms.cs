namespace Boardwright.Documents.Blanks;

/// <summary>The thirteen forms of a small hardwood yard, in the order of the wood's way.</summary>
public static class BlankForms
{
    public static IReadOnlyList<BlankForm> All { get; } = [.. LogBlanks.All, .. DryingBlanks.All, .. SellingBlanks.All, PourBlanks.PourSheet];

    /// <summary>The form of a name, or nothing.</summary>
    public static BlankForm? Find(string name) => All.FirstOrDefault(form => form.Name == name);
}
