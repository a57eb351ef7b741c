using Boardwright.Yard.Book;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Boardwright.Web.Layout;

/// <summary>Whose phone this is: chosen on the morning sheet, remembered in a cookie, named in forms beforehand. Nobody is kept out by it.</summary>
public static class Who
{
    /// <summary>The word of the address that shows everybody's sheet.</summary>
    public const string Everybody = "all";

    private static readonly TimeSpan Remembered = TimeSpan.FromDays(365);

    /// <summary>The person of a request: of its address, else of the cookie; null for everybody, or for a name the book does not have.</summary>
    public static string? Of(HttpContext? context, YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var name = context?.Request.Query["who"].FirstOrDefault() ?? (context?.Request.Cookies.TryGetValue(Cookie(context), out var kept) == true ? Uri.UnescapeDataString(kept) : null);
        return name is not null && state.People.ContainsKey(name) ? name : null;
    }

    /// <summary>The name of this phone, where numbers were set aside for it; null for none.</summary>
    public static string? Phone(HttpContext? context) => context?.RequestServices.GetService<YardCookies>() is { } names && context.Request.Cookies.TryGetValue(names.Phone, out var kept) ? Uri.UnescapeDataString(kept) : null;

    /// <summary>Remembers the name of this phone.</summary>
    public static void KeepPhone(HttpContext context, string phone)
    {
        ArgumentNullException.ThrowIfNull(context);
        context.Response.Cookies.Append(context.RequestServices.GetRequiredService<YardCookies>().Phone, Uri.EscapeDataString(phone), new() { MaxAge = Remembered, HttpOnly = true, SameSite = SameSiteMode.Lax, IsEssential = true });
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
            context.Response.Cookies.Delete(Cookie(context));
        }
        else if (Of(context, state) is { } name)
        {
            Append(context, name);
        }
    }

    /// <summary>Remembers who just wrote, for the next form of this device: whoever a form names that was written and so leads on to another page. A refused one leaves it.</summary>
    public static void Keep(HttpContext context, YardState state)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(state);
        if (context is { Request.HasFormContentType: true, Response.StatusCode: StatusCodes.Status302Found or StatusCodes.Status303SeeOther }
            && context.Request.Form.FirstOrDefault(field => field.Key == "by" || field.Key.EndsWith(".By", StringComparison.Ordinal)).Value.FirstOrDefault() is { } name && state.People.ContainsKey(name))
            Append(context, name);
    }

    private static void Append(HttpContext context, string name) =>
        context.Response.Cookies.Append(Cookie(context), Uri.EscapeDataString(name), new() { MaxAge = Remembered, HttpOnly = true, SameSite = SameSiteMode.Lax, IsEssential = true });

    private static string Cookie(HttpContext context) => context.RequestServices.GetRequiredService<YardCookies>().Who;
}
