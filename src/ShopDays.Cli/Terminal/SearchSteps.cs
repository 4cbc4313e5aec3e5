using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Terminal;

/// <summary>Hears from a search for a plan how far it has come, and says it in words.</summary>
/// <param name="say">Takes the words.</param>
/// <param name="budget">Schedules that are to be looked at.</param>
internal sealed class SearchSteps(Action<Func<string>> say, int budget) : IProgress<SearchStep>
{
    /// <inheritdoc/>
    public void Report(SearchStep value) => say(() => SearchWords.Of(value.Schedules, budget, value.Finish, value.ShopDays));
}
