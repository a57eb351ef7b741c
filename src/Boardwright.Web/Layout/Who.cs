using Boardwright.Yard.Book;
using Microsoft.AspNetCore.Http;

namespace Boardwright.Web.Layout;

/// <summary>Whose phone this is: chosen on the morning sheet, remembered in a cookie, named in forms beforehand. Nobody is kept out by it.</summary>
public static class Who
{
    /// <summary>The word of the address that shows everybody's sheet.</summary>
    public const string Everybody = "all";

    private const string Cookie = "boardwright-who";
    private static readonly TimeSpan Remembered = TimeSpan.FromDays(365);

    /// <summary>The person of a request: of its address, else of the cookie; null for everybody, or for a name the book does not have.</summary>
    public static string? Of(HttpContext? context, YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var name = context?.Request.Query["who"].FirstOrDefault() ?? (context?.Request.Cookies.TryGetValue(Cookie, out var kept) == true ? Uri.UnescapeDataString(kept) : null);
        return name is not null && state.People.ContainsKey(name) ? name : null;
    }

    /// <summary>Remembers the person an address names, before anything of the answer is sent.</summary>
    public static void Remember(HttpContext? context, YardState state)
    {
        if (context is null || context.Response.HasStarted || context.Request.Query["who"].FirstOrDefault() is not { } named)
        {
            return;
        }

        if (named == Everybody)
        {
            context.Response.Cookies.Delete(Cookie);
        }
        else if (Of(context, state) is { } name)
        {
            context.Response.Cookies.Append(Cookie, Uri.EscapeDataString(name), new() { MaxAge = Remembered, HttpOnly = true, SameSite = SameSiteMode.Lax, IsEssential = true });
        }
    }

    /// <summary>Remembers who just wrote, for the next form of this phone.</summary>
    public static void Keep(HttpContext? context, YardState state, string? name)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (context is { Response.HasStarted: false } && name is not null && state.People.ContainsKey(name))
        {
            context.Response.Cookies.Append(Cookie, Uri.EscapeDataString(name), new() { MaxAge = Remembered, HttpOnly = true, SameSite = SameSiteMode.Lax, IsEssential = true });
        }
    }
}
