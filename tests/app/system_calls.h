// SPDX-License-Identifier: MIT
//
// The system's calls for files and its clock, stood in for by this program's own, so that a test
// can let one fail. The program's definitions come before the C library's for all that is linked
// with it. Include it in one source alone.
#pragma once

#include <QByteArray>

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <cstdarg>
#include <ctime>

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/time.h>
#include <unistd.h>

namespace tripoise::test {

/// What is done to the calls of one thread.
struct Disturbance {
    const char* call = nullptr; ///< the one that fails
    int at = 1;                 ///< the first to fail, from 1
    bool onwards = false;       ///< and all after it
    int error = ENOSPC;
    int seen = 0;
    bool smallBites = false; ///< a write takes a byte at a time
};
inline thread_local Disturbance disturbance;
inline std::atomic<const char*> failsEverywhere = nullptr; ///< this call, in all threads: no room
inline std::atomic<bool> noModes = false; ///< in all threads: all may read and write every file
inline thread_local std::time_t clockAheadS = 0;

inline bool fails(const char* call)
{
    if (const char* everywhere = failsEverywhere; everywhere && qstrcmp(everywhere, call) == 0) {
        errno = ENOSPC;
        return true;
    }
    Disturbance& now = disturbance;
    if (!now.call || qstrcmp(now.call, call) != 0)
        return false;
    ++now.seen;
    if (now.seen != now.at && !(now.onwards && now.seen > now.at))
        return false;
    errno = now.error;
    return true;
}

template <typename Call> Call real(const char* name)
{
    return reinterpret_cast<Call>(dlsym(RTLD_NEXT, name));
}

/// While it lives, the calls of this thread are disturbed.
class Disturbed {
public:
    explicit Disturbed(const Disturbance& how) { disturbance = how; }
    ~Disturbed() { disturbance = {}; }
    Disturbed(const Disturbed&) = delete;
    Disturbed& operator=(const Disturbed&) = delete;

    [[nodiscard]] static bool happened() { return disturbance.seen >= disturbance.at; }
};

/// While it lives, a call finds no room on the disk, in all threads.
class NoRoom {
public:
    explicit NoRoom(const char* call) { failsEverywhere = call; }
    ~NoRoom() { failsEverywhere = nullptr; }
    NoRoom(const NoRoom&) = delete;
    NoRoom& operator=(const NoRoom&) = delete;
};

/// While it lives, the file system knows no modes.
class WithoutModes {
public:
    WithoutModes() { noModes = true; }
    ~WithoutModes() { noModes = false; }
    WithoutModes(const WithoutModes&) = delete;
    WithoutModes& operator=(const WithoutModes&) = delete;
};

inline int opened(const char* name, const char* path, int flags, mode_t mode)
{
    if (fails((flags & (O_WRONLY | O_RDWR)) != 0 ? "open to write" : "open to read"))
        return -1;
    const auto open = real<int (*)(const char*, int, ...)>(name);
    const int file = open(path, flags, mode);
    if (file >= 0 && noModes && (flags & O_CREAT) != 0)
        (void)real<int (*)(int, mode_t)>("fchmod")(file, 0666);
    return file;
}

} // namespace tripoise::test

// NOLINTBEGIN: the C library's names
extern "C" {

int open(const char* path, int flags, ...)
{
    va_list rest;
    va_start(rest, flags);
    const mode_t mode = (flags & O_CREAT) != 0 ? va_arg(rest, mode_t) : 0;
    va_end(rest);
    return tripoise::test::opened("open", path, flags, mode);
}
int open64(const char* path, int flags, ...)
{
    va_list rest;
    va_start(rest, flags);
    const mode_t mode = (flags & O_CREAT) != 0 ? va_arg(rest, mode_t) : 0;
    va_end(rest);
    return tripoise::test::opened("open64", path, flags, mode);
}
ssize_t read(int file, void* bytes, size_t count)
{
    using namespace tripoise::test;
    return fails("read") ? -1 : real<ssize_t (*)(int, void*, size_t)>("read")(file, bytes, count);
}
ssize_t write(int file, const void* bytes, size_t count)
{
    using namespace tripoise::test;
    if (fails("write"))
        return -1;
    return real<ssize_t (*)(int, const void*, size_t)>("write")(
        file, bytes, disturbance.smallBites ? std::min<size_t>(count, 1) : count);
}
int fsync(int file)
{
    using namespace tripoise::test;
    return fails("fsync") ? -1 : real<int (*)(int)>("fsync")(file);
}
int rename(const char* from, const char* to) noexcept
{
    using namespace tripoise::test;
    return fails("rename") ? -1 : real<int (*)(const char*, const char*)>("rename")(from, to);
}
int renameat2(int fromFolder, const char* from, int toFolder, const char* to,
              unsigned flags) noexcept
{
    using namespace tripoise::test;
    return fails("rename") ? -1
                           : real<int (*)(int, const char*, int, const char*, unsigned)>(
                               "renameat2")(fromFolder, from, toFolder, to, flags);
}
int link(const char* from, const char* to) noexcept
{
    using namespace tripoise::test;
    return fails("link") ? -1 : real<int (*)(const char*, const char*)>("link")(from, to);
}
int unlink(const char* path) noexcept
{
    using namespace tripoise::test;
    return fails("unlink") ? -1 : real<int (*)(const char*)>("unlink")(path);
}
int mkdir(const char* path, mode_t mode) noexcept
{
    using namespace tripoise::test;
    if (fails("mkdir"))
        return -1;
    const int made = real<int (*)(const char*, mode_t)>("mkdir")(path, mode);
    if (made == 0 && noModes)
        (void)real<int (*)(const char*, mode_t)>("chmod")(path, 0777);
    return made;
}
int chmod(const char* path, mode_t mode) noexcept
{
    using namespace tripoise::test;
    if (noModes)
        return errno = EPERM, -1;
    return fails("chmod") ? -1 : real<int (*)(const char*, mode_t)>("chmod")(path, mode);
}
int fchmod(int file, mode_t mode) noexcept
{
    using namespace tripoise::test;
    if (noModes)
        return errno = EPERM, -1;
    return fails("chmod") ? -1 : real<int (*)(int, mode_t)>("fchmod")(file, mode);
}
int clock_gettime(clockid_t clock, timespec* time) noexcept
{
    using namespace tripoise::test;
    const int result = real<int (*)(clockid_t, timespec*)>("clock_gettime")(clock, time);
    if (clock == CLOCK_REALTIME)
        time->tv_sec += clockAheadS;
    return result;
}
int gettimeofday(timeval* time, void* zone) noexcept
{
    using namespace tripoise::test;
    const int result = real<int (*)(timeval*, void*)>("gettimeofday")(time, zone);
    time->tv_sec += clockAheadS;
    return result;
}

} // extern "C"
// NOLINTEND
