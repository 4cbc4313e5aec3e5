using System.CommandLine;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Commands;

/// <summary>What a maker asked of a job.</summary>
/// <param name="Parsed">The command line, for options of the command's own.</param>
/// <param name="Workings">The shop and the job, and all that is worked out from them.</param>
/// <param name="AsJson">Whether the answer goes to another program.</param>
/// <param name="Screen">Where the answer is printed: nowhere when the maker wants quiet.</param>
internal sealed record Question(ParseResult Parsed, Workings Workings, bool AsJson, Screen Screen);
