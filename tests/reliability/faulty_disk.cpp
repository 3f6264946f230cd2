#include "reliability/faulty_disk.h"

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <cstdio>

namespace foldyard::faulty {
namespace {

struct Disk {
  bool is_armed = false;
  std::string folder;
  Fault fault = Fault::kill;
  int call = 0;
  int seen = 0;
  bool has_struck = false;
  std::array<bool, 4096> is_ours{};  // by descriptor

  bool holds(const char* path) const {
    return is_armed && path && std::string(path).rfind(folder, 0) == 0;
  }
  bool holds(int descriptor) const {
    return is_armed && descriptor >= 0 && descriptor < 4096 && is_ours[static_cast<std::size_t>(descriptor)];
  }
  void opened(int descriptor, bool ours) {
    if (descriptor >= 0 && descriptor < 4096) is_ours[static_cast<std::size_t>(descriptor)] = ours;
  }
};
Disk disk;

enum class Takes { space, no_space, bytes };

// The error this call is to give, or 0.
int strike(Takes takes) {
  if (disk.fault == Fault::short_write) {
    if (takes != Takes::bytes) return 0;
    if (++disk.seen < disk.call) return 0;
    disk.has_struck = true;
    return EDQUOT;
  }
  ++disk.seen;
  if (disk.fault == Fault::full_for_ever) {
    if (disk.seen < disk.call || takes == Takes::no_space) return 0;
    disk.has_struck = true;
    return ENOSPC;
  }
  if (disk.seen != disk.call) return 0;
  disk.has_struck = true;
  if (disk.fault == Fault::kill) raise(SIGKILL);
  return disk.fault == Fault::full_once && takes != Takes::no_space ? ENOSPC : EIO;
}

template <class Function>
Function real(const char* name) {
  return reinterpret_cast<Function>(dlsym(RTLD_NEXT, name));
}

// Whether the call was refused; then errno says why.
bool is_refused(bool is_ours, Takes takes) {
  if (!is_ours) return false;
  const int error = strike(takes);
  if (error != 0) errno = error;
  return error != 0;
}

template <class Open>
int open_file(const char* name, Open opens, bool is_ours, int flags) {
  const Takes takes = (flags & (O_CREAT | __O_TMPFILE)) != 0 ? Takes::space : Takes::no_space;
  if (is_refused(is_ours, takes)) return -1;
  const int descriptor = opens(name);
  disk.opened(descriptor, is_ours);
  return descriptor;
}

mode_t mode_in(int flags, va_list rest) {
  return (flags & (O_CREAT | __O_TMPFILE)) != 0 ? va_arg(rest, mode_t) : 0;
}

}  // namespace

const char* name_of(Fault fault) {
  switch (fault) {
    case Fault::full_once: return "no space once";
    case Fault::full_for_ever: return "no space for ever";
    case Fault::io_error: return "I/O error";
    case Fault::short_write: return "short write, then quota";
    case Fault::kill: return "kill";
  }
  return "";
}

void arm(const std::string& folder, Fault fault, int call) {
  disk = Disk{};
  disk.folder = folder;
  disk.fault = fault;
  disk.call = call;
  disk.is_armed = true;
}

bool has_struck() { return disk.has_struck; }

}  // namespace foldyard::faulty

using namespace foldyard::faulty;  // NOLINT: what follows belongs to the C library

extern "C" {

#define FOLDYARD_OPEN(call)                                                                      \
  int call(const char* path, int flags, ...) {                                                   \
    va_list rest;                                                                                \
    va_start(rest, flags);                                                                       \
    const mode_t mode = mode_in(flags, rest);                                                    \
    va_end(rest);                                                                                \
    static const auto next = real<int (*)(const char*, int, ...)>(#call);                        \
    return open_file(path, [&](const char* p) { return next(p, flags, mode); }, disk.holds(path), flags); \
  }
FOLDYARD_OPEN(open)
FOLDYARD_OPEN(open64)
#undef FOLDYARD_OPEN

ssize_t write(int descriptor, const void* bytes, size_t size) {
  static const auto next = real<ssize_t (*)(int, const void*, size_t)>("write");
  const bool half = disk.is_armed && disk.fault == Fault::short_write && !disk.has_struck;
  if (is_refused(disk.holds(descriptor), Takes::bytes)) {
    if (!half || size < 2) return -1;
    return next(descriptor, bytes, size / 2);
  }
  return next(descriptor, bytes, size);
}

#define FOLDYARD_BY_DESCRIPTOR(call, takes)                     \
  int call(int descriptor) {                                    \
    static const auto next = real<int (*)(int)>(#call);         \
    return is_refused(disk.holds(descriptor), takes) ? -1 : next(descriptor); \
  }
FOLDYARD_BY_DESCRIPTOR(fsync, Takes::space)
FOLDYARD_BY_DESCRIPTOR(fdatasync, Takes::space)
#undef FOLDYARD_BY_DESCRIPTOR

// A close that fails has closed (Linux).
int close(int descriptor) {
  static const auto next = real<int (*)(int)>("close");
  const bool is_ours = disk.holds(descriptor);
  disk.opened(descriptor, false);
  const bool refused = is_refused(is_ours, Takes::space);
  const int error = errno;
  const int closed = next(descriptor);
  if (refused) errno = error;
  return refused ? -1 : closed;
}

int fchmod(int descriptor, mode_t mode) noexcept {
  static const auto next = real<int (*)(int, mode_t)>("fchmod");
  return is_refused(disk.holds(descriptor), Takes::no_space) ? -1 : next(descriptor, mode);
}

int ftruncate64(int descriptor, off64_t size) noexcept {
  static const auto next = real<int (*)(int, off64_t)>("ftruncate64");
  return is_refused(disk.holds(descriptor), Takes::space) ? -1 : next(descriptor, size);
}

int rename(const char* from, const char* to) noexcept {
  static const auto next = real<int (*)(const char*, const char*)>("rename");
  return is_refused(disk.holds(to), Takes::space) ? -1 : next(from, to);
}

int link(const char* from, const char* to) noexcept {
  static const auto next = real<int (*)(const char*, const char*)>("link");
  return is_refused(disk.holds(to), Takes::space) ? -1 : next(from, to);
}

int mkdir(const char* path, mode_t mode) noexcept {
  static const auto next = real<int (*)(const char*, mode_t)>("mkdir");
  return is_refused(disk.holds(path), Takes::space) ? -1 : next(path, mode);
}

int unlink(const char* path) noexcept {
  static const auto next = real<int (*)(const char*)>("unlink");
  return is_refused(disk.holds(path), Takes::no_space) ? -1 : next(path);
}

}  // extern "C"
