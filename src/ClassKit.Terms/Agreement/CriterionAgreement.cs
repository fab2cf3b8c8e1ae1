namespace ClassKit.Terms.Agreement;

/// <summary>How far two markers agree on one criterion.</summary>
/// <param name="Criterion">Its name.</param>
/// <param name="Students">How many both were asked to mark in it: it may have been left out for somebody, as arranged.</param>
/// <param name="Same">How many students got the same level from both.</param>
/// <param name="Further">How many were more than one level apart.</param>
/// <param name="MeanDifference">Second marker less first, in levels: above 0 the second was the kinder.</param>
/// <param name="Kappa">Weighted kappa, by squared distance; null where it is undefined.</param>
public sealed record CriterionAgreement(string Criterion, int Students, int Same, int Further, double MeanDifference, Coefficient? Kappa);
