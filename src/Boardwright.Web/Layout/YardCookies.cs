using System.Security.Cryptography;
using System.Text;

namespace Boardwright.Web.Layout;

/// <summary>Names of a yard's cookies. A browser keeps cookies by host without the port: two yards served on one machine must not read each other's.</summary>
/// <param name="Who">Whose device it is.</param>
/// <param name="Forms">The key that keeps open forms valid.</param>
/// <param name="Phone">Which phone it is, where numbers are set aside for it.</param>
public sealed record YardCookies(string Who, string Forms, string Phone)
{
    private const int Digits = 8;

    /// <summary>The names of the yard whose keys lie in a folder: the same after a restart, others for another yard.</summary>
    public static YardCookies Of(string keysFolder)
    {
        var yard = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Path.GetFullPath(keysFolder))))[..Digits];
        return new($"boardwright-who-{yard}", $"boardwright-forms-{yard}", $"boardwright-phone-{yard}");
    }
}
