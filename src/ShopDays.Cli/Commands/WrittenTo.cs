using System.CommandLine;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Commands;

/// <summary>Options that name where something is written to.</summary>
internal static class WrittenTo
{
    /// <summary>An option that names a file; an empty name is wrong use.</summary>
    public static Option<string?> AFile(string name, string description) => Named(name, description, "FILE");

    /// <summary>An option that names a folder; an empty name is wrong use.</summary>
    public static Option<string?> AFolder(string name, string description) => Named(name, description, "FOLDER");

    /// <summary>Sees that a file can be written there: a misspelt folder is told before the work, not after it.</summary>
    /// <param name="path">The file; null for none.</param>
    /// <exception cref="FileTroubleException">It is a folder, or its folder is not there.</exception>
    public static void SeeThatItHasAPlace(string? path)
    {
        if (path is null)
        {
            return;
        }

        if (Directory.Exists(path))
        {
            throw FileTroubleException.Of(path, "is a folder, not a file");
        }

        if (!Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(path))))
        {
            throw FileTroubleException.Of(path, "has no folder to be written to");
        }
    }

    private static Option<string?> Named(string name, string description, string what)
    {
        var option = new Option<string?>(name) { Description = description, HelpName = what };
        option.Validators.Add(typed =>
        {
            if (string.IsNullOrWhiteSpace(typed.GetValueOrDefault<string?>()))
            {
                typed.AddError($"'{name}' needs the name of a {(what == "FILE" ? "file" : "folder")}");
            }
        });
        return option;
    }
}
