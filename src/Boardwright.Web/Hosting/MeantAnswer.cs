using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Extensions;
using Microsoft.Extensions.Primitives;

namespace Boardwright.Web.Hosting;

/// <summary>A press of a key that says what was meant: its field is filled with it before the page reads the form, so that no page needs to know of such keys.</summary>
public static class MeantAnswer
{
    /// <summary>Name such a key posts under; its value is the field, an equals sign, and what is put there.</summary>
    public const string Key = "_meant";

    internal static async Task InvokeAsync(HttpContext context, RequestDelegate next)
    {
        var request = context.Request;
        if (HttpMethods.IsGet(request.Method) && Parted(request.Query[Key]) is { } asked)
        {
            var query = new QueryBuilder(request.Query.Where(pair => pair.Key != Key).Select(pair => pair.Key == asked.Field ? new(pair.Key, asked.Meant) : pair));
            context.Response.Redirect(request.PathBase + request.Path + query.ToQueryString());
            return;
        }

        if (HttpMethods.IsPost(request.Method) && request.HasFormContentType)
        {
            var form = await request.ReadFormAsync(context.RequestAborted);
            if (Parted(form[Key]) is { } given)
                request.Form = new FormCollection(form.ToDictionary(pair => pair.Key, pair => pair.Key == given.Field ? new StringValues(given.Meant) : pair.Value), form.Files);
        }

        await next(context);
    }

    private static (string Field, string Meant)? Parted(string? value) => value?.IndexOf('=', StringComparison.Ordinal) is > 0 and var at ? (value[..at], value[(at + 1)..]) : null;
}
