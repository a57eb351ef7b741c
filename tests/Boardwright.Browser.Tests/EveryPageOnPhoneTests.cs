namespace Boardwright.Browser.Tests;

/// <summary>Every page on a phone, those of the early morning also in the dark.</summary>
public sealed class EveryPageOnPhoneTests(ServedProgram served) : EveryPageTests(served, Screen.Phone)
{
    [Theory, MemberData(nameof(Addresses.AtDawn), MemberType = typeof(Addresses))]
    public Task Page_is_sound_in_the_dark(string name, string path) => CheckAsync(name, path, Paper.Dawn);
}
