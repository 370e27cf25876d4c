// SPDX-License-Identifier: MIT
#include "session/preferences.h"

#include "wording/speech.h"

#include <QGuiApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QQmlEngine>
#include <QScreen>
#include <QSettings>

#include <cmath>

namespace tripoise {
namespace {

const QString metric = QStringLiteral("metric");
const QString imperial = QStringLiteral("imperial");
const QString german = QStringLiteral("de");
const QString english = QStringLiteral("en");

/// Qt itself says these, and its own catalogue is not on every computer.
[[maybe_unused]] constexpr const char* keyNames[]{QT_TRANSLATE_NOOP("QShortcut", "Ctrl"),
                                                  QT_TRANSLATE_NOOP("QShortcut", "Shift")};

const QString a4 = QStringLiteral("a4");
const QString letter = QStringLiteral("letter");

QString ordinaryLanguage()
{
    return QLocale::system().language() == QLocale::German ? german : english;
}

QString ordinaryUnits()
{
    return QLocale::system().measurementSystem() == QLocale::MetricSystem ? metric : imperial;
}

QString ordinaryPaper()
{
    return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem ? letter : a4;
}

/// What is remembered, unless somebody wrote something else there.
QString oneOf(const QStringList& words, const QString& key, const QString& otherwise)
{
    const QString word = QSettings().value(key).toString();
    return words.contains(word) ? word : otherwise;
}

double scaleOf(double scale)
{
    return std::isfinite(scale) ? qBound(1.0, scale, 2.0) : 1.0;
}

} // namespace

Preferences::Preferences(QObject* parent)
    : QObject(parent), m_units(oneOf({metric, imperial}, QStringLiteral("units"), ordinaryUnits())),
      m_language(oneOf({english, german}, QStringLiteral("language"), ordinaryLanguage())),
      m_paper(oneOf({a4, letter}, QStringLiteral("paper"), ordinaryPaper())),
      m_night(value(QStringLiteral("night"), false).toBool()),
      m_textScale(scaleOf(value(QStringLiteral("text_scale"), 1.0).toDouble()))
{
    installLanguage();
}

void Preferences::setUnits(const QString& units)
{
    if (m_units == units || (units != metric && units != imperial))
        return;
    m_units = units;
    remember(QStringLiteral("units"), units);
    speakNow();
    emit unitsChanged();
}

void Preferences::setLanguage(const QString& language)
{
    if (m_language == language || (language != german && language != english))
        return;
    m_language = language;
    remember(QStringLiteral("language"), language);
    installLanguage();
    emit languageChanged();
}

void Preferences::setPaper(const QString& paper)
{
    if (m_paper == paper || (paper != a4 && paper != letter))
        return;
    m_paper = paper;
    remember(QStringLiteral("paper"), paper);
    emit paperChanged();
}

void Preferences::setNight(bool night)
{
    if (m_night == night)
        return;
    m_night = night;
    remember(QStringLiteral("night"), night);
    emit nightChanged();
}

void Preferences::setTextScale(double scale)
{
    scale = scaleOf(scale);
    if (qFuzzyCompare(m_textScale, scale))
        return;
    m_textScale = scale;
    remember(QStringLiteral("text_scale"), scale);
    emit textScaleChanged();
}

void Preferences::toggleUnits()
{
    setUnits(m_units == metric ? imperial : metric);
}

QVariant Preferences::value(const QString& key, const QVariant& otherwise) const
{
    QVariant value = QSettings().value(key, otherwise);
    if (otherwise.isValid()) // a file holds text, and "false" is not false
        value.convert(otherwise.metaType());
    return value;
}

void Preferences::remember(const QString& key, const QVariant& value)
{
    QSettings().setValue(key, value);
}

void Preferences::restoreWindow(QWindow* window) const
{
    const QSize kept = QSettings().value(QStringLiteral("window/size")).toSize();
    const QSize size = kept.isEmpty() ? window->size() : kept;
    const QScreen* screen = window->screen();
    const QSize room = screen ? screen->availableSize() : size;
    window->resize(size.boundedTo(room).expandedTo(window->minimumSize()));
    const QVariant place = QSettings().value(QStringLiteral("window/place"));
    for (const QScreen* each : QGuiApplication::screens()) // it may be gone by now
        if (place.isValid()
            && each->availableGeometry().contains(QRect(place.toPoint(), window->minimumSize())))
            window->setPosition(place.toPoint());
    if (QSettings().value(QStringLiteral("window/maximised")).toBool())
        window->showMaximized();
}

void Preferences::rememberWindow(QWindow* window)
{
    const bool maximised = window->windowState() == Qt::WindowMaximized;
    remember(QStringLiteral("window/maximised"), maximised);
    if (maximised)
        return;
    remember(QStringLiteral("window/size"), window->size());
    remember(QStringLiteral("window/place"), window->position());
}

void Preferences::installLanguage()
{
    const auto install = [](QTranslator& translator, const QString& file) {
        QCoreApplication::removeTranslator(&translator);
        if (translator.load(file))
            QCoreApplication::installTranslator(&translator);
    };
    // What the system says against a file is said by Qt, in its own words where they are installed.
    install(m_qtWords, QLibraryInfo::path(QLibraryInfo::TranslationsPath)
                           + QStringLiteral("/qtbase_%1.qm").arg(m_language));
    // English has plural forms of its own to load.
    install(m_translator, QStringLiteral(":/i18n/tripoise_%1.qm").arg(m_language));
    if (QQmlEngine* engine = qmlEngine(this))
        engine->retranslate();
    speakNow();
}

void Preferences::speakNow()
{
    speak({m_language == german ? QLocale(QLocale::German) : QLocale::c(),
           m_units == imperial ? Units::Imperial : Units::Metric});
    if (m_session)
        emit m_session->speechChanged();
}

} // namespace tripoise
