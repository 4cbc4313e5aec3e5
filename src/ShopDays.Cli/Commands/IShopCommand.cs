using System.CommandLine;

namespace ShopDays.Cli.Commands;

/// <summary>One thing that can be typed after <c>shopdays</c>.</summary>
public interface IShopCommand
{
    /// <summary>Its name, arguments, options, help and action.</summary>
    Command Describe();
}
