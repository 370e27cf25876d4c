// SPDX-License-Identifier: MIT
#include "wording/fit_words.h"

#include "wording/findings.h"
#include "wording/words.h"

namespace tripoise {
namespace {

QString tooSmall(const QString& size, const UseFit& use, double postMm)
{
    switch (use.by) {
    case FailsBy::Height:
        return Words::tr("%1 is too small: with an ordinary stem and spacers the bar is %2 lower "
                         "than on a frame of this rider's size.")
            .arg(size, mm(-use.barAboveMm));
    case FailsBy::Reach:
        return Words::tr("%1 is too small: with an ordinary stem the bar is %2 nearer than on a "
                         "frame of this rider's size.")
            .arg(size, mm(-use.barBeyondMm));
    case FailsBy::Post:
        return Words::tr("%1 is too small: %2 of seat post show.").arg(size, partMm(postMm));
    }
    return {};
}

QString tooLarge(const QString& size, const UseFit& use, double postMm)
{
    switch (use.by) {
    case FailsBy::Height:
        return Words::tr("%1 is too large: with an ordinary stem and spacers the bar is %2 higher "
                         "than on a frame of this rider's size.")
            .arg(size, mm(use.barAboveMm));
    case FailsBy::Reach:
        return Words::tr("%1 is too large: with an ordinary stem the bar is %2 further away than "
                         "on a frame of this rider's size.")
            .arg(size, mm(use.barBeyondMm));
    case FailsBy::Post:
        if (postMm < 0.0)
            return Words::tr("%1 is too large: the saddle cannot go as low as this rider needs.")
                .arg(size);
        return Words::tr("%1 is too large: only %2 of seat post show.").arg(size, partMm(postMm));
    }
    return {};
}

/// Of a size that fits some of the riding: which, and which it does not. Empty where it is all one.
QString ofTheMix(const SizeFit& fit)
{
    QStringList fails;
    QStringList fits;
    for (const UseFit& use : fit.byUse)
        (use.state == FitState::Fits ? fits : fails) << nameOf(use.use);
    return fails.isEmpty() || fits.isEmpty()
               ? QString()
               : QLatin1Char(' ')
                     + Words::tr("That is for %1; for %2 it fits.", "kinds of riding")
                           .arg(listed(fails), listed(fits));
}

/// What the size lacks.
QStringList partsToOrder(const Candidate& candidate)
{
    const SizeFit& fit = candidate.fit;
    QStringList parts;
    if (fit.stem)
        parts << articled(
            Words::tr("a %1 stem of %2", "to order")
                .arg(halfMm(fit.stem->lengthMm), signedDegrees(fit.stem->angle.deg())));
    if (candidate.best) {
        const Stem& stem = candidate.best->setup.stem;
        const QString length = halfMm(stem.lengthMm);
        if (stem.joint == StemJoint::Shim)
            parts << articled(Words::tr("a shim for a %1 stem", "to order").arg(length));
        if (stem.joint == StemJoint::QuillAdaptor)
            parts << articled(Words::tr("a quill adaptor for a %1 stem", "to order").arg(length));
    }
    if (fit.postMmToOrder)
        parts
            << Words::tr("a seat post of at least %1", "to order").arg(partMm(*fit.postMmToOrder));
    return parts;
}

} // namespace

const char* keyOf(FitState state)
{
    switch (state) {
    case FitState::Fits: return "fits";
    case FitState::WithParts: return "with_parts";
    case FitState::TooSmall: return "too_small";
    case FitState::TooLarge: return "too_large";
    case FitState::Barred: return "barred";
    }
    return "";
}

QString fitName(FitState state)
{
    switch (state) {
    case FitState::Fits: return Words::tr("fits", "a size");
    case FitState::WithParts: return Words::tr("fits with parts to order", "a size");
    case FitState::TooSmall: return Words::tr("too small", "a size");
    case FitState::TooLarge: return Words::tr("too large", "a size");
    case FitState::Barred: return Words::tr("breaks a limit", "a size");
    }
    return {};
}

QString toOrderSentence(const PartToOrder& part)
{
    const QString length = halfMm(part.stem.lengthMm);
    const QString angle = signedDegrees(part.stem.angle.deg());
    if (!part.nearerMm)
        return articled(
            Words::tr("To order: a %1 stem of %2. Nothing in the box goes on this frame.")
                .arg(length, angle));
    return articled(
        Words::tr("To order: a %1 stem of %2. Nothing in the box comes nearer to there than %3.")
            .arg(length, angle, mm(*part.nearerMm)));
}

QString fitSentence(const Candidate& candidate, const Prepared& prepared)
{
    const SizeFit& fit = candidate.fit;
    const QString size = sizeName(candidate, prepared, Place::Opening);
    const double postMm = fit.postMm.value_or(0.0); // a size that fails by it has one
    const UseFit* use = failing(fit);
    switch (fit.state) {
    case FitState::Fits: return {};
    case FitState::WithParts: {
        const QStringList parts = partsToOrder(candidate);
        return (parts.size() > 1 ? Words::tr("%1 fits with parts to order: %2.", "a size, parts")
                                 : Words::tr("%1 fits with a part to order: %2.", "a size, a part"))
            .arg(size, listed(parts));
    }
    case FitState::TooSmall: return use ? tooSmall(size, *use, postMm) + ofTheMix(fit) : QString();
    case FitState::TooLarge: return use ? tooLarge(size, *use, postMm) + ofTheMix(fit) : QString();
    case FitState::Barred:
        return candidate.limits.empty() ? QString() : sentence(candidate.limits.front());
    }
    return {};
}

} // namespace tripoise
