using System.Reflection;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Builder;

namespace ShopDays.Cli.Bench.Look;

/// <summary>What pages look like and how they follow each other: files within this program, called by what is in them, so that a browser may keep them for ever.</summary>
internal static class Looks
{
    /// <summary>The style sheet's address.</summary>
    public static string Style { get; } = AddressOf("bench.css");

    /// <summary>The script's address.</summary>
    public static string Script { get; } = AddressOf("bench.js");

    /// <summary>The address of the mark in the browser's tab.</summary>
    public static string Icon { get; } = AddressOf("bench.svg");

    /// <summary>Maps them.</summary>
    public static void Map(WebApplication app)
    {
        MapOne(app, Style, "bench.css", "text/css; charset=utf-8");
        MapOne(app, Script, "bench.js", "text/javascript; charset=utf-8");
        MapOne(app, Icon, "bench.svg", "image/svg+xml");
    }

    private static void MapOne(WebApplication app, string address, string name, string type)
    {
        var content = Read(name);
        app.MapGet(address, context =>
        {
            context.Response.Headers.CacheControl = "public, max-age=31536000, immutable";
            context.Response.ContentType = type;
            context.Response.ContentLength = content.Length;
            return context.Response.Body.WriteAsync(content, context.RequestAborted).AsTask();
        });
    }

    private static string AddressOf(string name) => $"/look/{Convert.ToHexStringLower(SHA256.HashData(Read(name)))[..12]}/{name}";

    private static byte[] Read(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("look/" + name)!;
        var content = new byte[stream.Length];
        stream.ReadExactly(content);
        return content;
    }
}
